import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, describe, expect, test, vi } from "vitest";
import { BlankableField } from "../../../src/rooms/bench/BlankableField.tsx";
import { WordsField } from "../../../src/rooms/bench/WordsField.tsx";

afterEach(cleanup);

const box = (name: string) => screen.getByLabelText<HTMLInputElement>(name);
const said = (field: HTMLElement) =>
  (field.getAttribute("aria-describedby") ?? "").split(" ").map((id) => document.getElementById(id)?.textContent);

describe("a figure that may have been left out", () => {
  function show(value: number | undefined) {
    const onCommit = vi.fn<(value: number | undefined) => void>();
    const onSend = vi.fn<() => void>();
    render(
      <form
        onSubmit={(event) => {
          event.preventDefault();
          onSend();
        }}
      >
        <BlankableField
          label="R read"
          kind="resistance_ohm"
          value={value}
          least={0.01}
          most={9999}
          onCommit={onCommit}
        />
      </form>,
    );
    return { user: userEvent.setup(), field: box("R read"), onCommit, onSend };
  }

  test("emptied, it is taken as left out; spaces are empty too", async () => {
    const { user, field, onCommit } = show(36);
    await user.clear(field);
    await user.type(field, "  ");
    await user.tab();
    expect(onCommit.mock.calls).toEqual([[undefined]]);
  });

  test("looked at and left alone, or typed as it was, it takes nothing", async () => {
    const { user, field, onCommit } = show(36);
    const was = field.value;
    await user.click(field);
    await user.tab();
    await user.clear(field);
    await user.type(field, was);
    await user.tab();
    expect(onCommit).not.toHaveBeenCalled();
  });

  test("Enter takes what can be used and sends the form", async () => {
    const { user, field, onCommit, onSend } = show(undefined);
    await user.type(field, "41.5{Enter}");
    expect(onCommit.mock.calls).toEqual([[41.5]]);
    expect(onSend).toHaveBeenCalledTimes(1);
  });

  test("what cannot be used stays as typed, sends nothing, and says why until it is mended or put back", async () => {
    const { user, field, onCommit, onSend } = show(undefined);
    await user.type(field, "-3{Enter}");
    expect(field.value).toBe("-3");
    expect(onCommit).not.toHaveBeenCalled();
    expect(onSend).not.toHaveBeenCalled();
    expect(field.getAttribute("aria-invalid")).toBe("true");
    expect(said(field).join(" ")).toContain("too small: at least 0.01");
    // Nothing was read yet, so nothing is in force.
    expect(said(field).join(" ")).not.toContain("in force");
    await user.clear(field);
    expect(field.getAttribute("aria-invalid")).toBe("false");
    await user.type(field, "nonsense{Enter}");
    expect(field.getAttribute("aria-invalid")).toBe("true");
    await user.keyboard("{Escape}");
    expect(field.value).toBe("");
    expect(field.getAttribute("aria-invalid")).toBe("false");
  });

  test("a refusal names the value that still counts", async () => {
    const { user, field } = show(36);
    await user.clear(field);
    await user.type(field, "10000");
    await user.tab();
    expect(said(field).join(" ")).toMatch(/too large: at most .*Still in force: 36/);
  });
});

describe("a line of words", () => {
  const noShout = (text: string) => (text === text.toUpperCase() ? `“${text}” is all capitals.` : null);

  test("is taken with Enter, refused with the reason, and put back with Escape, which goes no further", async () => {
    const onCommit = vi.fn<(text: string) => void>();
    const onKeyOutside = vi.fn<(key: string) => void>();
    const user = userEvent.setup();
    render(
      // biome-ignore lint/a11y/noStaticElementInteractions: stands for the dialog around a field, which Escape closes
      <div onKeyDown={(event) => onKeyOutside(event.key)}>
        <WordsField label="remark" value="dry" most={12} check={noShout} onCommit={onCommit} />
      </div>,
    );
    const field = box("remark");
    await user.clear(field);
    await user.type(field, "WET{Enter}");
    expect(onCommit).not.toHaveBeenCalled();
    expect(field.value).toBe("WET");
    expect(said(field).join(" ")).toContain("“WET” is all capitals.");
    await user.type(field, "ter");
    expect(field.getAttribute("aria-invalid")).toBe("false");
    await user.keyboard("{Enter}");
    expect(onCommit.mock.calls).toEqual([["WETter"]]);
    await user.type(field, " today");
    await user.keyboard("{Escape}");
    expect(field.value).toBe("dry");
    expect(onKeyOutside).not.toHaveBeenCalledWith("Escape");
    // With nothing typed Escape is for what is around the field.
    await user.keyboard("{Escape}");
    expect(onKeyOutside).toHaveBeenCalledWith("Escape");
  });

  test("takes no more characters than it may", async () => {
    const user = userEvent.setup();
    render(<WordsField label="remark" value="" most={5} onCommit={() => {}} />);
    await user.type(box("remark"), "123456789");
    expect(box("remark").value).toBe("12345");
  });
});
