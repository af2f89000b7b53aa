import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { foldPage } from "../support/singleFile.ts";

const page = `<!doctype html>
<html>
  <head>
    <meta charset="utf-8" />
    <script type="module" crossorigin src="./assets/main.js"></script>
    <link rel="stylesheet" crossorigin href="./assets/main.css">
  </head>
  <body></body>
</html>
`;
const fold = (code: string, sheet = "") =>
  foldPage(page, new Map([["assets/main.js", code]]), new Map([["assets/main.css", sheet]]));
const scriptOf = (folded: string) => /<script type="module">([\s\S]*?)<\/script>/.exec(folded)?.[1];

test("nothing outside the page is referred to any more", () => {
  const folded = fold("run()", "p{color:red}");
  expect(folded).not.toMatch(/\s(?:src|href)=/);
  expect(folded).toContain("<style>p{color:red}</style></head>");
  expect(scriptOf(folded)).toBe("run()");
});

test("code stays itself: replacement patterns, closing tags and comment openers", () => {
  expect(scriptOf(fold('"$& $1 $$"'))).toBe('"$& $1 $$"');
  expect(scriptOf(fold('"</script><!--"'))).toBe('"<\\/script><\\!--"');
  expect(fold("", 'a::after{content:"</style>"}')).toContain('content:"<\\/style>"');
});

test("the policy lets exactly this script run and stands before it", () => {
  const folded = fold('"</script>"');
  const hash = createHash("sha256").update(scriptOf(folded)!).digest("base64");
  expect(folded).toContain(`script-src 'sha256-${hash}';`);
  expect(folded).toContain("default-src 'none'");
  expect(folded.indexOf("Content-Security-Policy")).toBeLessThan(folded.indexOf("<script"));
});

test("a script that stands in the page already is allowed by its own hash", () => {
  const early = page.replace("</head>", "<script>early()</script></head>");
  const folded = foldPage(early, new Map([["assets/main.js", "run()"]]), new Map([["assets/main.css", ""]]));
  expect(folded.match(/'sha256-/g)).toHaveLength(2);
});

test("a file that the page does not refer to, or a page without a charset line, fails the build", () => {
  expect(() => foldPage(page, new Map([["other.js", ""]]), new Map())).toThrow(/other\.js stands 0 times/);
  expect(() => foldPage(page.replace("charset", "name"), new Map(), new Map())).toThrow(/charset.*stands 0 times/);
});
