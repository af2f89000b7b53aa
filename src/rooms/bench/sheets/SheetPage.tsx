import type { ReactNode } from "react";
import { megahertz } from "../../../charts/megahertz.ts";
import { usePlan } from "../../../store/usePlan.ts";
import { today } from "../today.ts";

interface Props {
  readonly name: string;
  /** One line under the name. */
  readonly about?: ReactNode;
  /** One and a half times the tallest mast, as the page writes lengths. */
  readonly lineDistance: string;
  readonly children: ReactNode;
}

/** One sheet of paper: what it is, of which plan, and what stands at the foot of all of them. */
export function SheetPage({ name, about, lineDistance, children }: Props) {
  const title = usePlan((s) => s.plan.title);
  const frequency_MHz = usePlan((s) => s.plan.frequency_MHz);
  return (
    <article className="pg" aria-label={name}>
      <header className="pg-head">
        <h3 className="pg-name">{name}</h3>
        <p className="pg-plan">
          {title} · {megahertz(frequency_MHz)} MHz · printed {today()}
        </p>
        {about && <p className="pg-about">{about}</p>}
      </header>
      <div className="pg-body">{children}</div>
      <footer className="pg-foot">
        <b>Look up: keep every mast {lineDistance} or more from power lines.</b> Figures are a model’s; soil, insulation
        and metal nearby change them. Local codes and licensed practice come first.
      </footer>
    </article>
  );
}
