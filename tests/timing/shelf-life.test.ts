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

  it("refuses days that are none, and use before making", () => {
    expect(faults(shelfLife.try({ madeOn: "2027-02-29", useOn: "soon", shelfLife: "90 d" }))).toEqual(["refused madeOn", "refused useOn"]);
    expect(faults(shelfLife.try({ madeOn: "2027-03-01", useOn: "2027-02-28", shelfLife: "90 d" }))).toEqual(["refused useOn"]);
  });
});
