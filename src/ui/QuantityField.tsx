import { wavelength_m } from "../../engine/index.ts";
import { planStore, usePlan } from "../store/usePlan.ts";
import { useSettings } from "../store/useSettings.ts";
import type { QuantityInputProps } from "./QuantityInput.tsx";
import { QuantityInput } from "./QuantityInput.tsx";
import type { QuantityContext } from "./quantity/QuantityKind.ts";

export interface QuantityFieldProps extends Omit<QuantityInputProps, "context" | "onSettle"> {
  /** Gives "+5 %" a meaning: so much longer than this. */
  readonly percentOver?: QuantityContext["percentOver"];
}

/**
 * `QuantityInput` in the person's units, with wavelengths at the plan's frequency. Leaving the field seals the edit,
 * so that a run of arrow keys is one undo step: give `edit` a merge key when `onCommit` says `stepped`.
 */
export function QuantityField({ percentOver, ...props }: QuantityFieldProps) {
  const units = useSettings((s) => s.units);
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  const context = {
    units,
    wavelength_m: wavelength_m(frequency_MHz),
    ...(percentOver ? { percentOver } : {}),
  };
  return <QuantityInput {...props} context={context} onSettle={() => planStore.getState().sealEdit()} />;
}
