// Yes or no by the clock and by the finger; common practice.
import { describe, expect, it } from "vitest";
import { mayMoveUnit } from "../../src/mortar/may-move-unit.js";
import { faults } from "../support/faults.js";

describe("mayMoveUnit", () => {
  it("is yes up to the adjust time, with what is left of it", () => {
    const found = mayMoveUnit({ sinceSet: "9.5 min", adjustTime: "10 min", bedState: "soft" });
    expect([found.mayMove, found.left?.toString()]).toEqual([true, "0.5 min"]);
    // 90 s of a quarter of an hour: 13-1/2 min
    expect(mayMoveUnit({ sinceSet: "90 s", adjustTime: "15 min", bedState: "soft" }).left?.toString()).toBe("13.5 min");
  });

  it("is no from the adjust time on, and nothing is left of it", () => {
    for (const sinceSet of ["10 min", "1 h"] as const) {
      const found = mayMoveUnit({ sinceSet, adjustTime: "10 min", bedState: "soft" });
      expect(found.mayMove).toBe(false);
      expect(found).not.toHaveProperty("left");
      expect(found.why).toMatch(/adjust time of 10 min is over.*fresh mortar/);
    }
  });

  it("is no on a bed that has stiffened, whatever the clock says", () => {
    const found = mayMoveUnit({ sinceSet: "1 min", adjustTime: "10 min", bedState: "stiff" });
    expect([found.mayMove, found.why.includes("stiffened")]).toEqual([false, true]);
  });

  it("asks for all of it", () => {
    expect(faults(mayMoveUnit.try({}))).toEqual(["missing sinceSet", "missing adjustTime", "missing bedState"]);
    expect(faults(mayMoveUnit.try({ sinceSet: "-1 min", adjustTime: "0 min", bedState: "soft" }))).toEqual(["tooLow sinceSet", "tooLow adjustTime"]);
  });
});
