import { useEffect, useState } from "react";
import { usePlan } from "../store/usePlan.ts";
import { Button } from "../ui/Button.tsx";
import { Icon } from "../ui/Icon.tsx";
import { BandPicker } from "./BandPicker.tsx";
import { LinkDialog } from "./LinkDialog.tsx";
import { Mark } from "./Mark.tsx";
import { PathPicker } from "./PathPicker.tsx";
import { PlanMenu } from "./PlanMenu.tsx";
import { SoilPicker } from "./SoilPicker.tsx";
import { ViewPanel } from "./ViewPanel.tsx";
import "./topbar.css";

interface Props {
  /** Shows the system's file chooser. */
  onOpenFile(): void;
}

/** What holds for the whole plan, and what can be done with it. */
export function TopBar({ onOpenFile }: Props) {
  const [isLinkShown, showLink] = useState(false);
  return (
    <header className="topbar">
      <h1 className="topbar__name">
        <Mark />
        Hindwire
      </h1>
      <Title />
      <div className="topbar__facts">
        <BandPicker />
        <SoilPicker />
        <PathPicker />
      </div>
      <div className="topbar__acts">
        <UndoRedo />
        <PlanMenu onOpenFile={onOpenFile} onShowLink={() => showLink(true)} />
        <ViewPanel />
      </div>
      {isLinkShown && <LinkDialog onClose={() => showLink(false)} />}
    </header>
  );
}

function Title() {
  const title = usePlan((s) => s.plan.title);
  const edit = usePlan((s) => s.edit);
  const sealEdit = usePlan((s) => s.sealEdit);
  useEffect(() => {
    document.title = title ? `${title} – Hindwire` : "Hindwire";
  }, [title]);
  return (
    <input
      className="topbar__title"
      type="text"
      aria-label="Title of this plan"
      placeholder="Untitled plan"
      maxLength={200}
      spellCheck={false}
      value={title}
      onChange={(event) => {
        const typed = event.currentTarget.value;
        edit((plan) => ({ ...plan, title: typed }), "change the title", "title");
      }}
      onBlur={sealEdit}
    />
  );
}

function UndoRedo() {
  const undo = usePlan((s) => s.undo);
  const redo = usePlan((s) => s.redo);
  const canUndo = usePlan((s) => s.canUndo);
  const canRedo = usePlan((s) => s.canRedo);
  const undoLabel = usePlan((s) => s.undoLabel);
  const redoLabel = usePlan((s) => s.redoLabel);
  const back = undoLabel ? `Undo: ${undoLabel}` : "Undo";
  const again = redoLabel ? `Redo: ${redoLabel}` : "Redo";
  return (
    <>
      <Button
        look="quiet"
        isIconOnly
        icon={<Icon name="undo" />}
        aria-label={back}
        title={`${back} (Ctrl+Z)`}
        disabled={!canUndo}
        onClick={undo}
      />
      <Button
        look="quiet"
        isIconOnly
        icon={<Icon name="redo" />}
        aria-label={again}
        title={`${again} (Ctrl+Y)`}
        disabled={!canRedo}
        onClick={redo}
      />
    </>
  );
}
