import { type Fields, type Findings, plain } from "./Findings.ts";
import { limits } from "./limits.ts";
import { checkSlimness, diameterRule } from "./thickness.ts";

/** The radials of one element. With a count of 0 the lengths say nothing, and need only be numbers from 0 up. */
export function checkRadials(
  findings: Findings,
  element: Fields,
  where: string,
  of: string,
  wavelength: number | undefined,
): { radialCount: number | undefined; radialHeight_m: number | undefined } {
  const path = `${where}.radials`;
  const radials = findings.fields(element.radials, path, `The radial field ${of}`);
  if (!radials) return { radialCount: undefined, radialHeight_m: undefined };

  const count = { ...limits.radials, whole: true };
  const radialCount = findings.number(radials, "count", path, `The number of radials ${of}`, count);

  const none = radialCount === 0;
  const length_m = findings.number(radials, "length_m", path, `The radial length ${of}`, {
    ...(none
      ? { least: 0, most: limits.length_m }
      : wavelength === undefined
        ? { above: 0, most: limits.length_m }
        : {
            least: limits.radial_wl.least * wavelength,
            most: Math.min(limits.radial_wl.most * wavelength, limits.length_m),
            because: `${limits.radial_wl.least} to ${limits.radial_wl.most} wavelength, never over ${limits.length_m} m`,
          }),
    unit: "m",
  });
  const name = `The radial wire's diameter ${of}`;
  const thickness = none ? { least: 0, unit: "mm" } : diameterRule(wavelength);
  const diameter_mm = findings.number(radials, "diameter_mm", path, name, thickness);
  if (!none) checkSlimness(findings, `${path}.diameter_mm`, name, diameter_mm, length_m, "length");

  const radialHeight_m = findings.number(radials, "height_m", path, `The height of the radials ${of}`, {
    least: -limits.radialDepth_m,
    most: wavelength === undefined ? limits.length_m : limits.radialHeight_wl * wavelength,
    unit: "m",
    because: `buried ${limits.radialDepth_m} m to raised ${limits.radialHeight_wl} wavelength`,
  });

  if (radials.each !== undefined) checkEach(findings, radials, path, of, wavelength, radialCount);
  if (radials.insulation !== undefined) checkInsulation(findings, radials, path, of, diameter_mm);
  return { radialCount, radialHeight_m };
}

function checkEach(
  findings: Findings,
  radials: Fields,
  radialPath: string,
  of: string,
  wavelength: number | undefined,
  count: number | undefined,
): void {
  const path = `${radialPath}.each`;
  const each = findings.list(radials.each, path, `The list of single radials ${of}`);
  if (!each) return;
  if (count !== undefined && each.length !== count) {
    findings.add(
      "radial-count",
      path,
      `The radials ${of} are listed one by one, ${each.length} of them; the number of radials says ${count}.`,
    );
    return;
  }
  each.forEach((one, i) => {
    const where = `${path}[${i}]`;
    const name = `radial ${i + 1} ${of}`;
    const held = findings.fields(one, where, `The ${name}`);
    if (!held) return;
    findings.number(held, "direction_deg", where, `The direction of ${name}`, {
      least: -limits.direction_deg,
      most: limits.direction_deg,
      unit: "degrees",
    });
    const wl = limits.radial_wl;
    findings.number(held, "length_m", where, `The length of ${name}`, {
      ...(wavelength === undefined
        ? { above: 0, most: limits.length_m }
        : { least: wl.least * wavelength, most: Math.min(wl.most * wavelength, limits.length_m) }),
      unit: "m",
    });
  });
}

function checkInsulation(
  findings: Findings,
  radials: Fields,
  radialPath: string,
  of: string,
  wire_mm: number | undefined,
): void {
  const path = `${radialPath}.insulation`;
  const insulation = findings.fields(radials.insulation, path, `The insulation of the radials ${of}`);
  if (!insulation) return;
  const name = `The outer diameter of the insulation ${of}`;
  const outer_mm = findings.number(insulation, "diameter_mm", path, name, {
    above: 0,
    most: limits.insulationDiameter_mm,
    unit: "mm",
  });
  if (outer_mm !== undefined && wire_mm !== undefined && outer_mm <= wire_mm)
    findings.add(
      "insulation-too-thin",
      `${path}.diameter_mm`,
      `${name} is ${plain(outer_mm)} mm; it must be more than the wire's ${plain(wire_mm)} mm.`,
    );
  const permittivity = `The insulation's relative permittivity ${of}`;
  findings.number(insulation, "relativePermittivity", path, permittivity, limits.insulationPermittivity);
}
