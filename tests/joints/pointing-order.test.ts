import { describe, expect, it } from "vitest";
import { pointingOrder } from "../../src/joints/pointing-order.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("pointingOrder", () => {
  it("puts the waste on the net once, as the US Navy does (NAVEDTRA 14045): 8.90 and 20 % are 10.68 ft3", () => {
    // Its 8.90 ft3 are taken on a count of brick that has waste in it already; we never put waste on waste.
    const { expected, inputs } = vector("navy-brick-wall-8x14-mortar");
    expect([expected.net_mortar, inputs.waste]).toEqual(["8.90 ft3", "20 %"]);
    expectPrinted(pointingOrder({ net: "8.90 ft3", waste: "20 %", bagYield: "0.6 ft3" }).toOrder.to("ft3"), expected.ordered_mortar);
  });

  it("adds waste as the US Army's and Navy's take-offs do, and rounds up where the Navy rounded down", () => {
    const army = vector("army-takeoff-waste-10pc");
    expect(army.inputs.net_volume).toBe("1720.6 ft3");
    const order = pointingOrder({ net: "1720.6 ft3", waste: "10 %", bagYield: "1 yd3" });
    expectPrinted(order.toOrder.to("yd3"), army.expected.with_waste);
    const navy = vector("navy-p405-concrete-waste");
    expect([navy.inputs.net, navy.expected.yards]).toEqual(["527.40 ft3", "21 yd3"]);
    const slab = pointingOrder({ net: "527.40 ft3", waste: "10 %", bagYield: "1 yd3" });
    expectPrinted(slab.toOrder.to("ft3"), navy.expected.with_waste);
    // 580.14 / 27 = 21.49: 21 yards leave the job 13 ft3 short.
    expect(slab.bags.toString()).toBe("22");
  });

  it("orders to the bag where it comes out even, and one more a drop past it", () => {
    expect(pointingOrder({ net: "6 ft3", waste: "20 %", bagYield: "0.6 ft3" }).bags.toString()).toBe("12");
    expect(pointingOrder({ net: "6.0000001 ft3", waste: "20 %", bagYield: "0.6 ft3" }).bags.toString()).toBe("13");
  });

  it("never orders less for more waste, and refuses nonsense", () => {
    const bags = (["0 %", "1 %", "10 %", "15 %", "50 %"] as const).map((waste) => pointingOrder({ net: "6 ft3", waste, bagYield: "0.6 ft3" }).bags.toNumber());
    expect(bags).toEqual([10, 11, 11, 12, 15]);
    expect(faults(pointingOrder.try({ net: "0 ft3", waste: 15, bagYield: "0 ft3" }))).toEqual(["tooLow net", "tooHigh waste", "tooLow bagYield"]);
  });
});
