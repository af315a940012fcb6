import { expect, it } from "vitest";
import { intervalAge, timeByAgeFactor } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";

it("what takes 4 h at the reference takes 2 h twice as fast and 8 h half as fast", () => {
  const time = (ageFactor: number): string => timeByAgeFactor({ timeAtReference: "4 h", ageFactor }).time.toString();
  expect([time(2), time(1), time(0.5)]).toEqual(["2 h", "4 h", "8 h"]);
});

it("is the inverse of the age of an interval", () => {
  const { time } = timeByAgeFactor({ timeAtReference: "7 h", ageFactor: 0.75 });
  expect(intervalAge({ lasts: time, ageFactor: 0.75 }).age.toString()).toBe("7 h");
});

it("has no time at a standstill", () => {
  expect(faults(timeByAgeFactor.try({ timeAtReference: "4 h", ageFactor: 0 }))).toEqual(["tooLow ageFactor"]);
});
