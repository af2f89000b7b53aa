import { usePlan } from "../../../store/usePlan.ts";
import { BlankableField } from "../BlankableField.tsx";
import { bounds } from "../bounds.ts";
import { benchOf, useBenchEdit } from "../useBenchEdit.ts";
import { WordsField } from "../WordsField.tsx";

/** How far the compass is off at this place; without it the sheets give true bearings only. */
export function SiteFields() {
  const bench = usePlan((s) => benchOf(s.plan));
  const edit = useBenchEdit();
  return (
    <div className="fr-fields">
      <BlankableField
        label="compass points east of true north by"
        kind="angle_deg"
        value={bench.declination_deg}
        {...bounds.declination_deg}
        hint="degrees, minus for west; from a map or a geomagnetic model"
        onCommit={(declination_deg) => edit(() => ({ declination_deg }), "change the declination")}
      />
      <WordsField
        label="where that is from, and of what year"
        value={bench.declinationSource ?? ""}
        most={bounds.text_characters}
        hint="it drifts: look it up anew every few years"
        onCommit={(text) =>
          edit(() => ({ declinationSource: text.trim() || undefined }), "say where the declination is from")
        }
      />
    </div>
  );
}
