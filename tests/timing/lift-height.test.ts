import { describe, expect, it } from "vitest";
import { liftByLedger, liftHeight } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";

const lift = { wetWeight: "15 lb/ft2", ledgerCapacity: "60 lbf/ft", timeAtReference: "16 h", reference: "70 degF", temperature: "52 degF" } as const;

describe("liftHeight", () => {
  it("by hand: 60 lb/ft over 15 psf is 4 ft; 16 h at 70 degF wait 32 h or 29.1 h at 52 degF", () => {
    const doubling = liftHeight({ ...lift, rule: "doubling" });
    expect([doubling.height.toString(), doubling.governedBy, doubling.wait.to("h").toFixed(1)]).toEqual(["4 ft", "ledger", "32.0"]);
    // 70 degF = 294.261 K, 52 degF = 284.261 K: 16 exp(5000 (1/284.261 - 1/294.261)) = 16 x 1.8177 = 29.1
    expect(liftHeight({ ...lift, rule: "Arrhenius", activation: "5000 K" }).wait.to("h").toFixed(1)).toBe("29.1");
  });

  it("the bed governs where it holds less; told from the ledger where it was not tried", () => {
    expect(liftHeight({ ...lift, rule: "doubling", bedHolds: "3 ft" })).toMatchObject({ governedBy: "bed" });
    expect(liftHeight({ ...lift, rule: "doubling", bedHolds: "3 ft" }).height.toString()).toBe("3 ft");
    expect(liftHeight({ ...lift, rule: "doubling", bedHolds: "4 ft" }).governedBy).toBe("ledger");
    expect(liftHeight.solve({ ...lift, rule: "doubling" }).assumptions).toEqual([expect.stringContaining("no height was tried")]);
    expect(liftHeight.solve({ ...lift, rule: "doubling", bedHolds: "5 ft" }).assumptions).toEqual([]);
  });

  it("says who answers for the ledger", () => {
    expect(liftHeight.solve({ ...lift, rule: "doubling" }).cautions.some((text) => text.includes("licensed design professional"))).toBe(true);
  });

  it("refuses a wall that is too cold for the rule", () => {
    expect(faults(liftHeight.try({ ...lift, rule: "doubling", temperature: "39 degF" }))).toEqual(["tooLow temperature"]);
  });
});

describe("liftByLedger", () => {
  it("in metric units: 900 N/m over 75 kg/m2", () => {
    // 75 kg/m2 x 9.80665 m/s2 = 735.499 N/m2; 900 / 735.499 = 1.2237 m
    expect(liftByLedger({ wetWeight: "75 kg/m2", ledgerCapacity: "900 N/m" }).height.to("m").toFixed(4)).toBe("1.2237");
  });

  it("half the weight stands twice as high", () => {
    const height = (wetWeight: `${number} lb/ft2`): number => liftByLedger({ wetWeight, ledgerCapacity: "60 lbf/ft" }).height.toNumber("ft");
    expect(height("7.5 lb/ft2")).toBe(2 * height("15 lb/ft2"));
  });
});
