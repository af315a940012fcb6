import { describe, expect, it } from "vitest";
import { levellingCoat } from "../../src/mortar/levelling-coat.js";
import { faults } from "../support/faults.js";

const coat = { area: "400 ft2", thickness: "3/8 in", overdriven: 0, dimpleWidth: "1/2 in", dimpleDepth: "1/8 in", waste: "10 %", bagYield: "0.5 ft3" } as const;

describe("levellingCoat", () => {
  it("is area times thickness with waste, rounded up once", () => {
    // 400 x 3/8 / 12 = 12.5 ft3; x 1.1 = 13.75; / 0.5 = 27.5 bags.
    const order = levellingCoat(coat);
    expect(order.toOrder.toString()).toBe("13.75 ft3");
    expect(order.bags.toString()).toBe("28");
    // At 8 % it comes out even: 12.5 x 1.08 / 0.5 = 27.
    expect(levellingCoat({ ...coat, waste: "8 %" }).bags.toString()).toBe("27");
  });

  it("fills the dimples of overdriven screws", () => {
    // pi x 0.5^2 / 4 x 0.125 = 0.0245437 in3 each; 500 of them 12.2718 in3 = 0.00710 ft3.
    const order = levellingCoat({ ...coat, overdriven: 500 });
    expect(order.dimples.to("in3").toFixed(4)).toBe("12.2718");
    expect(order.net.to("ft3").toFixed(5)).toBe("12.50710");
    // Enough dimples tip the even order: 27 bags become 28.
    expect(levellingCoat({ ...coat, overdriven: 1, waste: "8 %" }).bags.toString()).toBe("28");
  });

  it("refuses nonsense", () => {
    expect(faults(levellingCoat.try({ ...coat, overdriven: -1, thickness: "0 in" }))).toEqual(["tooLow thickness", "tooLow overdriven"]);
  });
});
