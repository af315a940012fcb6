// What to do about a bloom; common practice, so what is held is that every way leads somewhere, and the edge of the wait.
import { describe, expect, it } from "vitest";
import { efflorescence } from "../../src/timing/efflorescence.js";
import { faults } from "../support/faults.js";

const even = { pattern: "even over new work", dissolves: "in water", wait: "30 d" } as const;

describe("efflorescence", () => {
  it("waits until the wall has been dry for the whole wait, and not a day longer", () => {
    expect(efflorescence({ ...even, dryFor: "29 d" })).toMatchObject({ action: "wait", kind: "salts" });
    expect(efflorescence({ ...even, dryFor: "29 d" }).left?.toString()).toBe("1 d");
    const over = efflorescence({ ...even, dryFor: "30 d" });
    expect(over.action).toBe("brush dry, then a trial patch");
    expect(over).not.toHaveProperty("left");
  });

  it("looks for the water first, however long the wall has been dry", () => {
    for (const pattern of ["below one place", "comes back"] as const) {
      const found = efflorescence({ ...even, pattern, dryFor: "90 d" });
      expect(found.action).toBe("find the water");
      expect(found.why).toContain("washing brings more salt out");
    }
  });

  it("tells salts that water takes away from lime that it does not", () => {
    expect((["in water", "not in water", "not tried"] as const).map((dissolves) => efflorescence({ ...even, dissolves, dryFor: "40 d" }).kind)).toEqual(["salts", "lime", "not told"]);
    expect(efflorescence({ ...even, dissolves: "not in water", dryFor: "40 d" }).why).toContain("lime stays");
  });

  it("takes no wait of its own", () => {
    expect(faults(efflorescence.try({ pattern: "comes back", dissolves: "in water", dryFor: "1 d" }))).toEqual(["missing wait"]);
  });
});
