import { expect } from "vitest";
import { journey } from "./journey.ts";
import { parts, settledLadder } from "./parts.ts";

journey.for([
  { typed: "ten metres", says: /./ },
  { typed: "-4", says: /./ },
  { typed: "9999 m", says: /200|longest|most/ },
  { typed: "1e999", says: /./ },
])("a length of “$typed” is refused beside the field and the answer stays", async ({ typed, says }, { open }) => {
  const page = await open();
  const at = parts(page);
  const before = { ladder: await settledLadder(page), length: await at.reflectorLength.inputValue() };
  await at.reflectorLength.fill(typed);
  await at.reflectorLength.press("Enter");
  expect(await at.reflectorLength.getAttribute("aria-invalid")).toBe("true");
  // What was typed stays, so that it can be mended; what is in force is said.
  expect(await at.reflectorLength.inputValue()).toBe(typed);
  const refusal = page.getByText(`Still in force: ${before.length}.`);
  expect(await refusal.textContent()).toMatch(says);
  expect(await settledLadder(page)).toEqual(before.ladder);

  await at.reflectorLength.press("Escape");
  expect(await at.reflectorLength.inputValue()).toBe(before.length);
  expect(await at.undo.isDisabled()).toBe(true);
});
