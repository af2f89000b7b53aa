import { useEffect, useState } from "react";
import { openPlanFile } from "./topbar/planActions.ts";

/** A plan file dropped anywhere on the page is opened; the page says so while the file hangs over it. */
export function OpenByDrop() {
  const [isOver, setOver] = useState(false);
  useEffect(() => {
    const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false;
    const onOver = (event: DragEvent) => {
      if (!hasFiles(event)) return;
      // A part of the page that takes files of its own has said so already.
      setOver(!event.defaultPrevented);
      event.preventDefault();
    };
    const onLeave = (event: DragEvent) => {
      // Leaving one element for another inside the window names the other.
      if (event.relatedTarget === null) setOver(false);
    };
    const onDrop = (event: DragEvent) => {
      if (!hasFiles(event)) return;
      setOver(false);
      if (event.defaultPrevented) return;
      event.preventDefault();
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
