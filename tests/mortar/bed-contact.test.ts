import { describe, expect, it } from "vitest";
import { bedContact } from "../../src/mortar/bed-contact.js";
import { faults } from "../support/faults.js";

describe("bedContact", () => {
  it("is the mortar over the gap, and never more than the whole back", () => {
    // 3/16 / 1/4 = 3/4; where the gap is closed to the bed or less, the whole back touches and mortar is pressed out.
    expect(bedContact({ bed: "3/16 in", gap: "1/4 in" }).contact.toString()).toBe("75 %");
    expect(bedContact({ bed: "1/4 in", gap: "1/4 in" }).contact.toString()).toBe("100 %");
    const pressed = bedContact.solve({ bed: "1/4 in", gap: "1/5 in" });
    expect(pressed.answers.filled.toString()).toBe("125 %");
    expect(pressed.answers.contact.toString()).toBe("100 %");
    expect(pressed.steps.at(-1)?.governedBy).toBe("whole");
  });

  it("refuses a gap of nought", () => {
    expect(faults(bedContact.try({ bed: "1/4 in", gap: "0 in" }))).toEqual(["tooLow gap"]);
  });
});
