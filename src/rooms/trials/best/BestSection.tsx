import { TrialBar } from "../TrialBar.tsx";
import { useTrial } from "../useTrial.ts";

export function BestSection({ obstacle }: { readonly obstacle: string | null }) {
  const trial = useTrial("best");
  return (
    <div className="tl-part">
      <TrialBar trial={trial} verb="Start" obstacle={obstacle} />
    </div>
  );
}
