import { useRef, useState } from "react";
import type { SiteLocation } from "../../../../engine/index.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { useSettings } from "../../../store/useSettings.ts";
import { Button } from "../../../ui/Button.tsx";
import { Icon } from "../../../ui/Icon.tsx";
import { svgFile } from "../../trials/save/svgFile.ts";
import { BlankableField } from "../BlankableField.tsx";
import { bounds } from "../bounds.ts";
import { StakeSketch } from "../sheets/StakeSketch.tsx";
import { stakeOut } from "../sheets/stakeOut.ts";
import { benchOf, useBenchEdit } from "../useBenchEdit.ts";
import { saveAs } from "./saveAs.ts";
import { siteGeoJson } from "./siteGeoJson.ts";

/** The plot as a drawing, and for a map where its place is stated. */
export function SiteFiles() {
  const plan = usePlan((s) => s.plan);
  const units = useSettings((s) => s.units);
  const edit = useBenchEdit();
  const drawing = useRef<HTMLDivElement>(null);
  const { location, declination_deg } = benchOf(plan);
  // A place is both or neither: the one that is typed first waits for the other.
  const [half, setHalf] = useState<Partial<SiteLocation>>({});
  const shown = { ...location, ...half };
  const place = (change: { readonly [K in keyof SiteLocation]?: SiteLocation[K] | undefined }) => {
    const { latitude_deg, longitude_deg } = { ...shown, ...change };
    if (latitude_deg !== undefined && longitude_deg !== undefined) {
      setHalf({});
      edit(() => ({ location: { latitude_deg, longitude_deg } }), "say where the driven stands");
      return;
    }
    setHalf({
      ...(latitude_deg !== undefined && { latitude_deg }),
      ...(longitude_deg !== undefined && { longitude_deg }),
    });
    if (location) edit(() => ({ location: undefined }), "take the place back");
  };
  const [refusal, setRefusal] = useState<string | null>(null);
  const saveSketch = () => {
    const svg = drawing.current?.querySelector("svg");
    if (svg) saveAs(`${plan.title} sketch`, ".svg", svgFile(svg, `${plan.title}, true north up`), "image/svg+xml");
  };
  const saveMap = () => {
    const written = siteGeoJson(plan);
    if (written.ok) saveAs(`${plan.title} site`, ".geojson", written.value, "application/geo+json");
    setRefusal(written.ok ? null : written.problems[0]!.message);
  };
  return (
    <section className="bn-said" aria-label="The plot">
      <h3>The plot</h3>
      <div className="bn-sketch" ref={drawing}>
        <StakeSketch
          plan={plan}
          units={units}
          stakes={stakeOut(plan, declination_deg).stakes}
          declination_deg={declination_deg}
        />
      </div>
      <div className="fr-fields">
        <BlankableField
          label="latitude of the driven"
          kind="ratio"
          value={shown.latitude_deg}
          {...bounds.latitude_deg}
          hint="degrees, minus for south; only for the map"
          onCommit={(latitude_deg) => place({ latitude_deg })}
        />
        <BlankableField
          label="longitude of the driven"
          kind="ratio"
          value={shown.longitude_deg}
          {...bounds.longitude_deg}
          hint="degrees, minus for west; only for the map"
          onCommit={(longitude_deg) => place({ longitude_deg })}
        />
      </div>
      <div className="fr-acts">
        <Button icon={<Icon name="save" />} onClick={saveSketch}>
          Save the sketch as SVG
        </Button>
        <Button icon={<Icon name="save" />} onClick={saveMap}>
          Save the site as GeoJSON
        </Button>
      </div>
      {refusal && !location && (
        <p className="fr-problem" role="alert">
          {refusal}
        </p>
      )}
      {location && (
        <p className="fr-small">The place is part of the plan, and goes along where its file or link is sent.</p>
      )}
    </section>
  );
}
