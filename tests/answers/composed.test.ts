import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { composedFile, composedText } from "../support/answers.mjs";

it("what composed functions answer is written as their types have it now (npm run exports)", { timeout: 180_000 }, () => {
  expect(readFileSync(composedFile, "utf8")).toBe(composedText());
});
