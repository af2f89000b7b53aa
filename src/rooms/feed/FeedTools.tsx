import { memo } from "react";
import type { SwrTop } from "../../charts/bandLayout.ts";
import { Switch } from "../../ui/Switch.tsx";

export type FeedView = "swr" | "ohms";
type Top = `${SwrTop}`;

interface Props {
  readonly view: FeedView;
  readonly onView: (view: FeedView) => void;
  readonly top: Top;
  readonly onTop: (top: Top) => void;
}

const views = [
  { value: "swr", label: "SWR" },
  { value: "ohms", label: "R and X" },
] as const;
const tops = [
  { value: "3", label: "to 3" },
  { value: "5", label: "to 5" },
  { value: "10", label: "to 10" },
] as const;

/** What is drawn over the band, and how far up. */
export const FeedTools = memo(function FeedTools({ view, onView, top, onTop }: Props) {
  return (
    <div className="feed-tools">
      <Switch<FeedView> label="view" isLabelShown={false} choices={views} value={view} onChange={onView} />
      {view === "swr" && (
        <Switch<Top> label="SWR up to" isLabelShown={false} choices={tops} value={top} onChange={onTop} />
      )}
    </div>
  );
});
