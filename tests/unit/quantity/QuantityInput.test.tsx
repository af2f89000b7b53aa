import { cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { afterEach, describe, expect, test, vi } from "vitest";
import type { QuantityInputProps } from "../../../src/ui/QuantityInput.tsx";
import { QuantityInput } from "../../../src/ui/QuantityInput.tsx";

afterEach(cleanup);

const commits = vi.fn<(value: number, stepped: boolean) => void>();
const settles = vi.fn<() => void>();

function Harness(props: Partial<QuantityInputProps> & { readonly start: number }) {
  const [value, setValue] = useState(props.start);
  return (
    <>
      <QuantityInput
        label="spacing"
        kind="length_m"
        context={{ units: "metric", wavelength_m: 42 }}
        least={0.1}
        most={200}
        {...props}
        value={value}
        onCommit={(next, stepped) => {
          commits(next, stepped);
          setValue(next);
        }}
        onSettle={settles}
      />
      <button type="button">elsewhere</button>
      <button type="button" onClick={() => setValue(12)}>
        from outside
      </button>
    </>
  );
}

function show(start: number, props: Partial<QuantityInputProps> = {}) {
  commits.mockClear();
  settles.mockClear();
  render(<Harness start={start} {...props} />);
  return { user: userEvent.setup(), field: screen.getByRole<HTMLInputElement>("textbox", { name: "spacing" }) };
}

const description = (field: HTMLElement) =>
  (field.getAttribute("aria-describedby") ?? "")
    .split(" ")
    .map((id) => document.getElementById(id)?.textContent ?? "")
    .join(" ");

describe("committing", () => {
  test("Enter commits; until then the text stays as typed and nothing changes", async () => {
    const { user, field } = show(8.4);
    await user.clear(field);
    await user.type(field, "33 ft 6 in");
    expect(field.value).toBe("33 ft 6 in");
    expect(commits).not.toHaveBeenCalled();
    expect(description(field)).toContain("reads as 10.211 m");
    await user.keyboard("{Enter}");
    expect(commits.mock.calls).toEqual([[10.2108, false]]);
    expect(field.value).toBe("10.211 m");
  });

  test("leaving the field commits and settles", async () => {
    const { user, field } = show(8.4);
    await user.clear(field);
    await user.type(field, "9,5");
    await user.click(screen.getByText("elsewhere"));
    expect(commits.mock.calls).toEqual([[9.5, false]]);
    expect(settles).toHaveBeenCalledTimes(1);
  });

  test("Escape puts the value in force back", async () => {
    const { user, field } = show(8.4);
    await user.clear(field);
    await user.type(field, "12{Escape}");
    expect(field.value).toBe("8.40 m");
    await user.tab();
    expect(commits).not.toHaveBeenCalled();
  });

  test("a value with more digits than are shown survives being looked at", async () => {
    const { user, field } = show(8.412_345_678);
    expect(field.value).toBe("8.412 m");
    await user.click(field);
    await user.keyboard("{Enter}");
    await user.tab();
    await user.click(field);
    // Typed away and back again is untouched, too.
    await user.type(field, "x{Backspace}{Enter}");
    await user.tab();
    expect(commits).not.toHaveBeenCalled();
  });

  test("typing the value in force again is no commit", async () => {
    const { user, field } = show(8.4);
    await user.clear(field);
    await user.type(field, "840 cm{Enter}");
    expect(commits).not.toHaveBeenCalled();
    expect(field.value).toBe("8.40 m");
  });

  test("a value changed elsewhere shows at once", async () => {
    const { user, field } = show(8.4);
    await user.click(screen.getByText("from outside"));
    expect(field.value).toBe("12.00 m");
  });
});

describe("refusing", () => {
  test.each([
    ["10 kg", /“kg” is not a unit/],
    ["0", /0\.00 m is too small: at least 0\.10 m/],
    ["-5 m", /−5\.00 m is too small/],
    ["1e6", /too large: at most 200\.00 m/],
    ["NaN", /not a unit/],
  ])("%s: the text stays, the reason stands under it, the value stays in force", async (text, message) => {
    const { user, field } = show(8.4);
    await user.clear(field);
    await user.type(field, `${text}{Enter}`);
    expect(field.value).toBe(text);
    expect(field.getAttribute("aria-invalid")).toBe("true");
    expect(description(field)).toMatch(message);
    expect(description(field)).toContain("Still in force: 8.40 m.");
    await user.tab();
    expect(field.value).toBe(text);
    expect(commits).not.toHaveBeenCalled();
  });

  test("an emptied field says so and gives its value back on Escape", async () => {
    const { user, field } = show(8.4);
    await user.clear(field);
    await user.tab();
    expect(description(field)).toContain("Nothing is written");
    await user.click(field);
    await user.keyboard("{Escape}");
    expect(field.value).toBe("8.40 m");
    expect(field.getAttribute("aria-invalid")).toBe("false");
  });

  test("what the surroundings know against a value is said like any other refusal", async () => {
    const { user, field } = show(8.4, { check: (value) => (value === 9 ? "Nine is taken." : null) });
    await user.clear(field);
    await user.type(field, "9{Enter}");
    expect(description(field)).toContain("Nine is taken.");
    expect(commits).not.toHaveBeenCalled();
    await user.type(field, ".5");
    expect(field.getAttribute("aria-invalid")).toBe("false");
    await user.keyboard("{Enter}");
    expect(commits.mock.calls).toEqual([[9.5, false]]);
  });

  test("a pasted page is refused and kept", async () => {
    const { user, field } = show(8.4);
    await user.clear(field);
    await user.paste("10 m ".repeat(2000));
    await user.keyboard("{Enter}");
    expect(field.value).toHaveLength(10_000);
    expect(description(field)).toMatch(/10000 characters/);
  });
});

describe("stepping", () => {
  test("arrows step by a centimetre, with Shift by ten", async () => {
    const { user, field } = show(8.4);
    await user.click(field);
    await user.keyboard("{ArrowUp}{ArrowUp}{ArrowDown}{Shift>}{ArrowUp}{/Shift}");
    expect(commits.mock.calls).toEqual([
      [8.41, true],
      [8.42, true],
      [8.41, true],
      [8.51, true],
    ]);
    expect(field.value).toBe("8.51 m");
  });

  test("a step goes from what is typed, and no further than the limit", async () => {
    const { user, field } = show(8.4);
    await user.clear(field);
    await user.type(field, "0.105{ArrowDown}");
    expect(commits.mock.calls).toEqual([[0.1, true]]);
    await user.keyboard("{ArrowDown}");
    expect(commits).toHaveBeenCalledTimes(1);
    expect(description(field)).toContain("at least 0.10 m");
  });
});

test("hints: the other units, or what is given", () => {
  const { field } = show(8.4);
  expect(description(field)).toContain("27 ft 6 3/4 in");
  cleanup();
  expect(description(show(8.4, { hint: "0.200 λ" }).field)).toContain("0.200 λ");
});
