import { memo } from "react";
import type { CutForm } from "../../charts/elevationLayout.ts";
import { Switch } from "../../ui/Switch.tsx";

export type CutAngles = "true" | "stretched";

interface Props {
  readonly form: CutForm;
  readonly onForm: (form: CutForm) => void;
  readonly angles: CutAngles;
  readonly onAngles: (angles: CutAngles) => void;
  readonly isHeld: boolean;
  readonly onHold: (isHeld: boolean) => void;
  /** A curve runs off the held scale. */
  readonly isOutgrown: boolean;
}

const forms = [
  { value: "polar", label: "polar" },
  { value: "rectangular", label: "rectangular" },
] as const;
const kinds = [
  { value: "true", label: "true" },
  { value: "stretched", label: "stretched" },
] as const;

/** How both cuts are drawn. */
export const SkyTools = memo(function SkyTools(p: Props) {
  return (
    <div className="sky-tools">
      <Switch<CutForm> label="form" isLabelShown={false} choices={forms} value={p.form} onChange={p.onForm} />
      <Switch<CutAngles>
        label="elevation angles"
        isLabelShown={false}
        choices={kinds}
        value={p.angles}
        onChange={p.onAngles}
      />
      <label className="check">
        <input type="checkbox" checked={p.isHeld} onChange={(e) => p.onHold(e.currentTarget.checked)} />
        hold the scale
      </label>
      {p.isOutgrown && <span className="sky-off-scale">A curve runs off the held scale.</span>}
    </div>
  );
});
