import { TrialBar } from "../TrialBar.tsx";
import { useTrial } from "../useTrial.ts";

export function RadialsSection({ obstacle }: { readonly obstacle: string | null }) {
  const trial = useTrial("radials");
  return (
    <div className="tl-part">
      <TrialBar trial={trial} verb="Start" obstacle={obstacle} />
    </div>
  );
}
