import { expect, it } from "vitest";
import { intervalAge } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";

it("6 h at half the pace are 3 h of age, at a standstill none", () => {
  expect(intervalAge({ lasts: "6 h", ageFactor: 0.5 }).age.toString()).toBe("3 h");
  expect(intervalAge({ lasts: "6 h", ageFactor: 0 }).age.toString()).toBe("0 h");
});

it("refuses an interval or a factor below nought", () => {
  expect(faults(intervalAge.try({ lasts: "-1 h", ageFactor: -0.1 }))).toEqual(["tooLow lasts", "tooLow ageFactor"]);
});
