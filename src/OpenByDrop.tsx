import { useEffect, useState } from "react";
import { openPlanFile } from "./topbar/planActions.ts";

/** A plan file dropped anywhere on the page is opened; the page says so while the file hangs over it. */
export function OpenByDrop() {
  const [isOver, setOver] = useState(false);
  useEffect(() => {
    const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false;
    const onOver = (event: DragEvent) => {
      if (!hasFiles(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const onLeave = (event: DragEvent) => {
      // Leaving one element for another inside the window names the other.
      if (event.relatedTarget === null) setOver(false);
    };
    const onDrop = (event: DragEvent) => {
      if (!hasFiles(event)) return;
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file) void openPlanFile(file);
    };
    document.addEventListener("dragover", onOver);
    document.addEventListener("dragleave", onLeave);
    document.addEventListener("drop", onDrop);
    return () => {
      document.removeEventListener("dragover", onOver);
      document.removeEventListener("dragleave", onLeave);
      document.removeEventListener("drop", onDrop);
    };
  }, []);
  return isOver ? (
    <div className="drop-here" role="status">
      <p>Drop the plan file to open it</p>
    </div>
  ) : null;
}
