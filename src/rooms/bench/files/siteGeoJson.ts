import { drivenOf, failed, layRadials, ok, type Result, type SavedPlan } from "../../../../engine/index.ts";
import { elementName } from "../../yard/elementName.ts";
import { headingOf } from "../../yard/heading.ts";
import { stakeOut } from "../sheets/stakeOut.ts";
import { benchOf } from "../useBenchEdit.ts";
import { groundPoint } from "./groundPoint.ts";

/** Closer to a pole than this a plane with north up is no map. */
const mostLatitude_deg = 85;

/**
 * The site as GeoJSON (RFC 7946: WGS 84, longitude first): bases, stakes, radials and the beam's direction. The place
 * stated is the driven's base.
 * Problem: no place is stated, or one within 5° of a pole.
 */
export function siteGeoJson(plan: SavedPlan): Result<string> {
  const { location, declination_deg } = benchOf(plan);
  if (!location)
    return failed({
      code: "no-place",
      where: "bench.location",
      message: "The plan does not say where the driven stands; a map needs its latitude and longitude.",
    });
  if (Math.abs(location.latitude_deg) > mostLatitude_deg)
    return failed({
      code: "out-of-range",
      where: "bench.location.latitude_deg",
      message: `The latitude is ${location.latitude_deg} degrees; a map of a garden can be written up to ${mostLatitude_deg}.`,
    });
  const datum = drivenOf(plan) ?? plan.elements[0]!;
  const heading = (headingOf(plan) * Math.PI) / 180;
  const at = (forward_m: number, left_m: number): readonly [number, number] => {
    const ahead = forward_m - datum.forward_m;
    const left = left_m - datum.left_m;
    const point = groundPoint(
      location,
      ahead * Math.sin(heading) - left * Math.cos(heading),
      ahead * Math.cos(heading) + left * Math.sin(heading),
    );
    // A tenth of a millimetre.
    return [Number(point.longitude_deg.toFixed(9)), Number(point.latitude_deg.toFixed(9))];
  };
  const feature = (type: "Point" | "LineString" | "MultiLineString", coordinates: unknown, properties: object) => ({
    type: "Feature",
    geometry: { type, coordinates },
    properties,
  });
  const laid = layRadials(
    plan,
    plan.elements.map(() => 0),
  );
  const { stakes } = stakeOut(plan, declination_deg);
  const features = [
    ...plan.elements.map((one) =>
      feature("Point", at(one.forward_m, one.left_m), {
        name: elementName(plan, one),
        kind: "base",
        upright_m: one.height_m,
        base: one.base.kind,
      }),
    ),
    ...stakes
      .slice(plan.elements.length)
      .map((one) =>
        feature("Point", at(one.forward_m, one.left_m), { name: `stake ${one.letter}: ${one.name}`, kind: "stake" }),
      ),
    ...plan.elements.flatMap((one, i) => {
      const lines = laid
        .filter((wire) => wire.element === i)
        .map(({ from_m, to_m }) => [at(from_m[0], from_m[1]), at(to_m[0], to_m[1])]);
      return lines.length === 0
        ? []
        : [feature("MultiLineString", lines, { name: `radials of the ${elementName(plan, one)}`, kind: "radials" })];
    }),
    feature("LineString", [at(datum.forward_m, datum.left_m), at(datum.forward_m + datum.height_m, datum.left_m)], {
      name: "beam",
      kind: "beam",
      trueBearing_deg: headingOf(plan),
    }),
  ];
  return ok(`${JSON.stringify({ type: "FeatureCollection", features }, null, 1)}\n`);
}
