import { describe, expect, it } from "vitest";
import { mayAddWater } from "../../src/mortar/may-add-water.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

const c270 = { material: "ASTM C270 mortar", state: "stiffened" } as const;

describe("mayAddWater", () => {
  it("never lets thin-set, coloured joint mortar or repointing mortar have water", () => {
    for (const material of ["thin-set mortar", "coloured joint mortar", "repointing mortar"] as const) {
      const { mayAdd, why } = mayAddWater({ material, state: "stiffened", age: "0 min" });
      expect(mayAdd).toBe(false);
      expect(why).not.toBe("");
    }
    expect(vector("nps-repoint-30min").expected.limit).toBe("about 30 min");
    expect(mayAddWater({ material: "repointing mortar", state: "stiffened", age: "5 min" }).why).toContain("about 30 min");
    expect(mayAddWater({ material: "repointing mortar", state: "stiffened", age: "5 min" }).source).toContain("Preservation Brief 2");
  });

  it("lets mortar after ASTM C270 have it up to the limit of the rule named, and no longer", () => {
    // Limits as printed: ASTM C270 2-1/2 h, UFGS-04215 2.25 h, Beall 1.5 to 2.5 h, of which the low end.
    expect(vector("ufgs-04215-2p25h").expected.limit).toBe("2.25 h");
    expect(vector("beall-1p5-2p5h").expected.limit).toBe("1.5 to 2.5 h");
    const rules = [["ASTM C270", "2.5 h", "2.51 h"], ["UFGS-04215", "2.25 h", "2.26 h"], ["Beall 2004", "1.5 h", "1.51 h"]] as const;
    for (const [rule, at, past] of rules) {
      expect(mayAddWater({ ...c270, rule, age: at }).mayAdd).toBe(true);
      expect(mayAddWater({ ...c270, rule, age: past })).toMatchObject({ mayAdd: false, why: expect.stringContaining("throw it away") as string });
    }
    expect(mayAddWater({ ...c270, rule: "UFGS-04215", age: "1 h" }).source).toContain("UFGS-04215");
  });

  it("throws away what has begun to set, whatever its age", () => {
    expect(mayAddWater({ ...c270, state: "set", rule: "ASTM C270", age: "10 min" })).toMatchObject({ mayAdd: false, why: "it has begun to set: throw it away" });
    expect(mayAddWater({ material: "thin-set mortar", state: "set", age: "10 min" }).why).toContain("begun to set");
  });

  it("asks for the rule where sources differ, and for none where they do not", () => {
    expect(faults(mayAddWater.try({ ...c270, age: "1 h" }))).toEqual(["missing rule"]);
    expect(faults(mayAddWater.try({ material: "thin-set mortar", state: "stiffened", age: "1 h", rule: "ASTM C270" }))).toEqual(["refused rule"]);
    expect(faults(mayAddWater.try({ ...c270, age: "-1 h", rule: "mine" }))).toEqual(["tooLow age", "notAChoice rule"]);
  });
});
