import { useMemo } from "react";
import type { DesignTrace } from "../../charts/DesignTrace.ts";
import type { useAnswer } from "../../store/useAnswer.ts";
import { usePlan } from "../../store/usePlan.ts";

/**
 * The live design and the pinned ones with their answers, as the cuts draw them.
 *
 * @param useReadouts `useAnswer` for what is watched, `useCalmAnswer` for what is read
 */
export function useTraces(useReadouts: typeof useAnswer): readonly DesignTrace[] {
  const readout = useReadouts((s) => s.readout);
  const pinReadouts = useReadouts((s) => s.pinReadouts);
  const pins = usePlan((s) => s.plan.pins);
  return useMemo(
    () => [
      { id: "live", name: "this design", role: "live" as const, style: 0, readout },
      ...(pins ?? []).map((pin, style) => ({
        id: pin.id,
        name: pin.name,
        role: "pin" as const,
        style,
        readout: pinReadouts[pin.id] ?? null,
      })),
    ],
    [readout, pinReadouts, pins],
  );
}
