import { expect, test } from "vitest";
import { shippedLicences } from "../support/shippedLicences.ts";

test("each package is named once, with its version and its licence's own words", () => {
  const top = process.cwd();
  const text = shippedLicences(
    [
      `${top}/node_modules/react/index.js`,
      `${top}/node_modules/react/jsx-runtime.js`,
      `\0${top}/node_modules/scheduler/index.js?commonjs`,
      `${top}/node_modules/@babel/runtime/helpers/esm/extends.js`,
      `${top}/src/main.tsx`,
      "\0rolldown/runtime.js",
    ],
    ["@fontsource-variable/atkinson-hyperlegible-next"],
  );
  expect(text.match(/^react \d+\.\d+\.\d+, MIT$/gm)).toHaveLength(1);
  expect(text).toMatch(/^scheduler \d/m);
  expect(text).toMatch(/^@babel\/runtime \d/m);
  expect(text).toMatch(/^@fontsource-variable\/atkinson-hyperlegible-next .*OFL/m);
  expect(text).toContain("Permission is hereby granted, free of charge");
  expect(text).toContain("SIL OPEN FONT LICENSE");
  expect(text).not.toContain("main.tsx");
});
