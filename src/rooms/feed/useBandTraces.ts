import { useMemo } from "react";
import type { BandTrace } from "../../charts/BandTrace.ts";
import { bandTraces } from "../../charts/bandTraces.ts";
import { useAnswer } from "../../store/useAnswer.ts";
import { usePlan } from "../../store/usePlan.ts";
import { namesIn } from "../sky/namesIn.ts";

/** The feedpoints of the live design and of the pinned ones over the band. */
export function useBandTraces(): readonly BandTrace[] {
  const band = useAnswer((s) => s.band);
  const bandPlan = useAnswer((s) => s.bandPlan);
  const pinBands = useAnswer((s) => s.pinBands);
  // Beside a full answer, curves that still are the preview's say so.
  const tag = useAnswer((s) => (s.bandModel === "preview" && s.model === "full-wave" ? ", preview" : ""));
  const pins = usePlan((s) => s.plan.pins);
  return useMemo(
    () =>
      bandTraces([
        { id: "live", name: `this design${tag}`, role: "live", style: 0, band, nameOf: namesIn(bandPlan) },
        ...(pins ?? []).map((pin, style) => ({
          id: pin.id,
          name: pin.name + tag,
          role: "pin" as const,
          style,
          band: pinBands[pin.id] ?? null,
          nameOf: namesIn(pin.plan),
        })),
      ]),
    [band, bandPlan, pinBands, tag, pins],
  );
}
