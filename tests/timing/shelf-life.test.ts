// Days by the calendar, counted by hand.
import { describe, expect, it } from "vitest";
import { shelfLife } from "../../src/timing/shelf-life.js";
import { faults } from "../support/faults.js";

describe("shelfLife", () => {
  it("counts the days of the calendar, a leap day among them", () => {
    // 2028: January 31, February 29, March 31 days; 91 days from 1 January to 1 April.
    const bags = shelfLife({ madeOn: "2028-01-01", useOn: "2028-04-01", shelfLife: "91 d" });
    expect([bags.ageAtUse.toString(), bags.state, bags.lastDay]).toEqual(["91 d", "in time", "2028-04-01"]);
    // 2027 has no leap day: 90 days.
    expect(shelfLife({ madeOn: "2027-01-01", useOn: "2027-04-01", shelfLife: "91 d" }).ageAtUse.toString()).toBe("90 d");
  });

  it("is over the day after the last", () => {
    const bags = shelfLife({ madeOn: "2028-01-01", useOn: "2028-04-02", shelfLife: "91 d" });
    expect([bags.state, bags.lastDay]).toEqual(["too old", "2028-04-01"]);
    // Half a day is no day more.
    expect(shelfLife({ madeOn: "2028-01-01", useOn: "2028-04-01", shelfLife: "90.5 d" })).toMatchObject({ state: "too old", lastDay: "2028-03-31" });
  });

  it("counts months by the calendar: to the same day, or to the last of a month that has none such", () => {
    // Nine months from 15 January: 15 October. Six from 31 August 2027: February 2028 has 29 days.
    expect(shelfLife({ madeOn: "2027-01-15", useOn: "2027-10-15", shelfMonths: 9 })).toMatchObject({ state: "in time", lastDay: "2027-10-15" });
    expect(shelfLife({ madeOn: "2027-01-15", useOn: "2027-10-16", shelfMonths: "9" }).state).toBe("too old");
    expect(shelfLife({ madeOn: "2027-08-31", useOn: "2028-02-29", shelfMonths: 6 })).toMatchObject({ state: "in time", lastDay: "2028-02-29" });
    expect(shelfLife({ madeOn: "2026-08-31", useOn: "2027-03-01", shelfMonths: 6 })).toMatchObject({ state: "too old", lastDay: "2027-02-28" });
    expect(shelfLife({ madeOn: "2027-01-01", useOn: "2027-01-02", shelfMonths: 120 }).lastDay).toBe("2037-01-01");
  });

  it("wants one of both, in whole months", () => {
    const days = { madeOn: "2027-03-01", useOn: "2027-03-02" };
    expect(faults(shelfLife.try(days))).toEqual(["either keeps"]);
    expect(faults(shelfLife.try({ ...days, useOn: "soon", shelfLife: "90 d", shelfMonths: 3 }))).toEqual(["either keeps", "refused useOn"]);
    expect(faults(shelfLife.try({ ...days, shelfMonths: 1.5 }))).toEqual(["notWhole shelfMonths"]);
    expect(faults(shelfLife.try({ ...days, shelfMonths: 0 }))).toEqual(["tooLow shelfMonths"]);
    expect(faults(shelfLife.try({ ...days, shelfMonths: 121 }))).toEqual(["tooHigh shelfMonths"]);
  });

  it("refuses days that are none, and use before making", () => {
    expect(faults(shelfLife.try({ madeOn: "2027-02-29", useOn: "soon", shelfLife: "90 d" }))).toEqual(["refused madeOn", "refused useOn"]);
    expect(faults(shelfLife.try({ madeOn: "2027-03-01", useOn: "2027-02-28", shelfLife: "90 d" }))).toEqual(["refused useOn"]);
  });
});
