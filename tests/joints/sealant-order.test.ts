import { describe, expect, it } from "vitest";
import { sealantOrder } from "../../src/joints/sealant-order.js";
import { faults } from "../support/faults.js";

const joint = { length: "120 ft", width: "3/4 in", waste: "10 %", tube: "10 fl oz" } as const;

describe("sealantOrder", () => {
  it("is half as deep as wide, at least 1/4 and at most 1/2 in (common practice)", () => {
    const depth = (width: "3/8 in" | "1/2 in" | "3/4 in" | "1 in" | "1-1/2 in"): string => sealantOrder({ ...joint, width }).depth.toString();
    expect([depth("3/8 in"), depth("1/2 in"), depth("3/4 in"), depth("1 in"), depth("1-1/2 in")]).toEqual(["0.25 in", "0.25 in", "0.375 in", "0.5 in", "0.5 in"]);
  });

  it("fills the joint and counts tubes", () => {
    // 1440 in x 3/4 x 3/8 = 405 in3; a fluid ounce is 231/128 in3: 224.4 fl oz; x 1.1 = 246.9; 25 tubes of 10.
    const order = sealantOrder(joint);
    expect(order.net.to("in3").toString()).toBe("405");
    expect(order.net.to("floz").toFixed(1)).toBe("224.4");
    expect(order.tubes.toString()).toBe("25");
    // 405 in3 in tubes of 40.5: ten to the tube.
    expect(sealantOrder({ ...joint, waste: 0, tube: "40.5 in3" }).tubes.toString()).toBe("10");
  });

  it("takes the depth that governs, and not half the width, for the volume", () => {
    // A narrow joint is 1/4 in deep: 1440 in x 1/4 x 1/4 = 90 in3. A wide one 1/2 in: 1440 x 1-1/2 x 1/2 = 1080 in3.
    expect(sealantOrder({ ...joint, width: "1/4 in" }).net.to("in3").toString()).toBe("90");
    expect(sealantOrder({ ...joint, width: "1-1/2 in" }).net.to("in3").toString()).toBe("1080");
  });

  it("gives millilitres for metric joints", () => {
    // 30 m x 20 mm x 10 mm = 6000 mL; x 1.05 = 6300; / 300 = 21 tubes.
    const order = sealantOrder({ length: "30 m", width: "20 mm", waste: "5 %", tube: "300 mL" });
    expect(order.net.toString()).toBe("6000 mL");
    expect(order.tubes.toString()).toBe("21");
  });

  it("refuses nonsense", () => {
    expect(faults(sealantOrder.try({ ...joint, width: "0 in", waste: 10 }))).toEqual(["tooLow width", "tooHigh waste"]);
  });
});
