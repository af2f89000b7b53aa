import { reflectorOf, withoutReflector, withReflector } from "../../../engine/index.ts";
import { planStore, usePlan } from "../../store/usePlan.ts";
import { Button } from "../../ui/Button.tsx";

/** One press puts a reflector behind the driven element; one press takes it out again. */
export function ReflectorButton() {
  const hasReflector = usePlan((s) => reflectorOf(s.plan) !== undefined);
  const edit = (change: typeof withReflector, label: string) => planStore.getState().edit(change, label);
  return hasReflector ? (
    <Button onClick={() => edit(withoutReflector, "take the reflector out")}>Take reflector out</Button>
  ) : (
    <Button look="hot" onClick={() => edit(withReflector, "add a reflector")}>
      Add reflector
    </Button>
  );
}
