import { useEffect, useRef, useState } from "react";
import { checkSavedPlan, encodePlanLink } from "../../engine/index.ts";
import { planStore } from "../store/usePlan.ts";
import { Button } from "../ui/Button.tsx";
import { Dialog } from "../ui/Dialog.tsx";

interface Props {
  onClose(): void;
}

/** The whole plan as an address: copied when the browser allows it, and in a field to copy by hand in any case. */
export function LinkDialog({ onClose }: Props) {
  const { plan } = planStore.getState();
  const [link] = useState(() => location.href.replace(/#.*$/, "") + encodePlanLink(plan));
  const [told, setTold] = useState("");
  const field = useRef<HTMLTextAreaElement>(null);
  const checked = checkSavedPlan(plan);

  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      setTold("Copied.");
    } catch {
      field.current?.select();
      setTold("This browser did not let the page copy. The link is selected: press Ctrl+C.");
    }
  };
  useEffect(() => field.current?.select(), []);

  if (!checked.ok)
    return (
      <Dialog title="Link to this plan" onClose={onClose}>
        <p>A link holds only plans that can be opened. To put right first: {checked.problems[0]?.message}</p>
      </Dialog>
    );

  return (
    <Dialog title="Link to this plan" onClose={onClose} actions={<Button onClick={copy}>Copy</Button>}>
      <label className="field">
        <span className="field__label">The plan travels in the link itself and reaches no server</span>
        <textarea className="field__input link-text" readOnly rows={5} ref={field} value={link} />
      </label>
      <p role="status" className="link-told">
        {told}
      </p>
      {location.protocol === "file:" && (
        <p className="soft">
          This page is open from a file. On another computer, put everything from the # on after the address of a copy
          of this page there.
        </p>
      )}
    </Dialog>
  );
}
