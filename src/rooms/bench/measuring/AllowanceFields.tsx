import type { BenchAllowance } from "../../../../engine/index.ts";
import { QuantityField } from "../../../ui/QuantityField.tsx";
import { bounds } from "../bounds.ts";
import { useBenchEdit } from "../useBenchEdit.ts";

const fields = [
  { key: "driven_percent", label: "cut the driven longer by, %" },
  { key: "reflector_percent", label: "cut the reflector longer by, %" },
  { key: "radial_percent", label: "cut radials longer by, %" },
] as const;

interface Props {
  readonly allowance: BenchAllowance;
  readonly isStated: boolean;
  readonly hasReflector: boolean;
}

/** By how much longer than planned things are cut at first. */
export function AllowanceFields({ allowance, isStated, hasReflector }: Props) {
  const edit = useBenchEdit();
  return (
    <div className="fr-fields">
      {fields
        .filter(({ key }) => hasReflector || key !== "reflector_percent")
        .map(({ key, label }) => (
          <QuantityField
            key={key}
            label={label}
            kind="ratio"
            value={allowance[key]}
            {...bounds.allowance_percent}
            hint={isStated ? "of the planned length" : "assumed until you say otherwise"}
            onCommit={(value, stepped) =>
              edit(
                () => ({ allowance: { ...allowance, [key]: value } }),
                "change what is cut longer",
                stepped ? key : undefined,
              )
            }
          />
        ))}
    </div>
  );
}
