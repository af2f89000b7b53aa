import { useState } from "react";
import { usePlan } from "../../../store/usePlan.ts";
import { Button } from "../../../ui/Button.tsx";
import { Dialog } from "../../../ui/Dialog.tsx";
import type { YardEdits } from "../useYardEdits.ts";
import { LayingTable } from "./LayingTable.tsx";
import { MeetingFields } from "./MeetingFields.tsx";
import { SheathFields } from "./SheathFields.tsx";
import { SingleRadials } from "./SingleRadials.tsx";
import { StakeFields } from "./StakeFields.tsx";
import "./radials.css";

/** The button that opens all there is to say about radials beyond how many, how long and how they lie. */
export function RadialDetails({ edits }: { readonly edits: YardEdits }) {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <>
      <Button look="quiet" onClick={() => setIsOpen(true)} aria-haspopup="dialog" aria-label="Radials in detail …">
        in detail …
      </Button>
      {isOpen && (
        <Dialog title="Radials in detail" onClose={() => setIsOpen(false)}>
          <Details edits={edits} />
        </Dialog>
      )}
    </>
  );
}

function Details({ edits }: { readonly edits: YardEdits }) {
  const plan = usePlan((s) => s.plan);
  const isFull = plan.ground.kind !== "soil" || plan.soilModel === "full-wave";
  return (
    <div className="radials">
      {!isFull && (
        <p className="radials__caution">
          The quick preview knows nothing of these: they count in the full-wave answer, which this plan does not ask
          for.
        </p>
      )}
      <LayingTable />
      <SheathFields plan={plan} edits={edits} />
      {plan.elements.length > 1 && <MeetingFields plan={plan} edits={edits} />}
      {plan.ground.kind === "soil" && <StakeFields plan={plan} edits={edits} />}
      {plan.elements.map((element) => (
        <SingleRadials key={element.id} plan={plan} element={element} edits={edits} />
      ))}
      <p className="soft">
        Call the services before you dig or drive anything in. Pin radials flush with the ground where people walk and
        mow. Their ends carry high voltage when you transmit.
      </p>
    </div>
  );
}
