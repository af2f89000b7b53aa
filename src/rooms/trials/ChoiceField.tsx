import type { ReactNode } from "react";
import { QuantityField } from "../../ui/QuantityField.tsx";
import type { QuantityKind } from "../../ui/quantity/QuantityKind.ts";

interface Props {
  readonly label: string;
  readonly kind: QuantityKind;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly hint?: ReactNode;
  onChange(value: number): void;
}

/** One thing that is set for a trial. It is no part of the plan, so there is nothing to undo. */
export function ChoiceField({ onChange, hint = "", ...rest }: Props) {
  return <QuantityField {...rest} hint={hint} onCommit={(value) => onChange(value)} />;
}
