import { useId, useMemo, useState } from "react";
import type { ElementPlan, SavedPlan } from "../../../engine/index.ts";
import { withElementHeight, withElementPosition, withReflector } from "../../../engine/index.ts";
import { figure } from "../../charts/figure.ts";
import { answerModels } from "../../store/answerModels.ts";
import { useAnswer } from "../../store/useAnswer.ts";
import { useCalmPlan } from "../../store/useCalmPlan.ts";
import { usePlan } from "../../store/usePlan.ts";
import { useSettings } from "../../store/useSettings.ts";
import { mostCurrent, type RadialCurrents } from "./currentLines.ts";
import { elementName } from "./elementName.ts";
import { geometryWarnings, isOfArray } from "./geometryWarnings.ts";
import { withHeading } from "./heading.ts";
import { PlanView } from "./PlanView.tsx";
import { SideView } from "./SideView.tsx";
import { useSheetSize } from "./useSheetSize.ts";
import { useYardEdits } from "./useYardEdits.ts";
import { YardFields } from "./YardFields.tsx";
import { YardNote } from "./YardNote.tsx";
import "./yard.css";

/** The plot: from above, from the side, and in figures. Everything drawn can be dragged or moved by arrow keys. */
export function Yard() {
  const plan = usePlan((s) => s.plan);
  const isGood = usePlan((s) => s.verdict.ok);
  const units = useSettings((s) => s.units);
  const [refused, setRefused] = useState<string | null>(null);
  const edits = useYardEdits(setRefused);
  const [aboveRef, aboveSize] = useSheetSize<HTMLFieldSetElement>();
  const [sideRef, sideSize] = useSheetSize<HTMLFieldSetElement>();

  // A plan that cannot be used (from a file, say) is shown in its fields; the drawing keeps the last good one.
  const [lastGood, setLastGood] = useState(plan);
  if (isGood && lastGood !== plan) setLastGood(plan);
  const drawn = isGood ? plan : lastGood;

  const noteId = useId();
  const ofArray = useMemo(() => geometryWarnings(plan).filter(isOfArray), [plan]);
  const printed = useCalmPlan((s) => s.plan);
  const currents = useAnswer((s) => (s.readoutPlan === drawn && s.readout?.radialCurrents) || null);

  const [dragBase, setDragBase] = useState<SavedPlan | null>(null);
  const actions = {
    fitTo: dragBase ?? drawn,
    onDragStart: () => {
      setDragBase(drawn);
      edits.beginDrag();
    },
    onDragEnd: () => {
      setDragBase(null);
      edits.endDrag();
    },
    onDragCancel: () => {
      setDragBase(null);
      edits.cancelDrag();
    },
    onSettle: edits.settle,
  };
  // A pointer moves many times within one place of the grid: the same measure again is no edit.
  const move = (element: ElementPlan, forward_m: number) =>
    edits.change(
      (p) =>
        inPlan(p, element)?.forward_m === forward_m ? p : withElementPosition(p, element.id, forward_m, element.left_m),
      `move ${nameOf(drawn, element)}`,
      `place ${element.id}`,
    );
  const cut = (element: ElementPlan, height_m: number) =>
    edits.change(
      (p) => (inPlan(p, element)?.height_m === height_m ? p : withElementHeight(p, element.id, height_m)),
      `change the length of ${nameOf(drawn, element)}`,
      `height ${element.id}`,
    );

  return (
    <div className="yard">
      <div className="yard-views">
        <fieldset className="yard-sheet" ref={aboveRef}>
          <legend className="visually-hidden">From above, true north up</legend>
          <PlanView
            {...actions}
            plan={drawn}
            units={units}
            size={aboveSize}
            currents={currents}
            onMove={move}
            onTurn={(heading) => edits.change((p) => withHeading(p, heading), "turn the beam", "heading")}
            onAddReflector={() => edits.change(withReflector, "add a reflector")}
          />
        </fieldset>
        <fieldset className="yard-sheet" ref={sideRef}>
          <legend className="visually-hidden">From the side, forward to the right</legend>
          <SideView {...actions} plan={drawn} units={units} size={sideSize} onHeight={cut} />
        </fieldset>
      </div>
      <YardNote
        refused={refused}
        cautionId={noteId}
        caution={ofArray[0]?.message}
        more={ofArray.length - 1}
        otherwise={currentWords(drawn, currents)}
      />
      <YardFields plan={printed} edits={edits} noteId={noteId} />
    </div>
  );
}

function currentWords(plan: SavedPlan, currents: readonly RadialCurrents[] | null): string {
  if (currents) return `Thickest radial: ${figure(mostCurrent(currents), 2)} of the driven’s base current.`;
  return answerModels(plan).best[0] === "full-wave" ? "Radial currents are drawn with the full answer." : "";
}

function inPlan(plan: SavedPlan, element: ElementPlan): ElementPlan | undefined {
  return plan.elements.find((other) => other.id === element.id);
}

function nameOf(plan: SavedPlan, element: ElementPlan): string {
  const name = elementName(plan, element);
  return name.startsWith("element") ? name : `the ${name}${name === "driven" ? " element" : ""}`;
}
