import { expect, test } from "vitest";
import { readPackage, wanted } from "./support/exports.mjs";

test("package.json exports every topic (if not, run `npm run exports`)", () => {
  const { exports, typesVersions } = readPackage();
  expect({ exports, typesVersions }).toEqual(wanted());
});
