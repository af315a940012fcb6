import { describe, expect, it } from "vitest";
import { screwOrder } from "../../src/fasteners/screw-order.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("screwOrder", () => {
  // 40 * 52 = 2080; 2080 * 1.05 = 2184; 2184/1000 = 2.2, 3 boxes.
  it("40 boards of 52, 5 % waste, boxes of 1000", () => {
    const order = screwOrder({ boards: 40, screwsPerBoard: 52, waste: "5 %", packCount: 1000 });
    expect([order.net, order.toOrder, order.boxes].map(String)).toEqual(["2080", "2184", "3"]);
  });

  // 10 * 10 = 100; * 1.1 = 110 exactly, where binary floats make it a little more; 110/10 = 11 boxes, not 12.
  it("does not round up what comes out even", () => {
    const order = screwOrder({ boards: 10, screwsPerBoard: 10, waste: "10 %", packCount: 10 });
    expect([order.toOrder, order.boxes].map(String)).toEqual(["110", "11"]);
    expect(Math.ceil((100 * 1.1) / 10)).toBe(12);
  });

  // 3 * 7 = 21; * 1.1 = 23.1: the 24th screw is a whole one.
  it("orders whole screws", () => {
    expect(screwOrder({ boards: 3, screwsPerBoard: 7, waste: "10 %", packCount: 100 }).toOrder.toString()).toBe("24");
  });

  it("one round-up: 1 screw over a full box takes another", () => {
    expect(screwOrder({ boards: 1, screwsPerBoard: 1001, waste: 0, packCount: 1000 }).boxes.toString()).toBe("2");
    expect(screwOrder({ boards: 1, screwsPerBoard: 1000, waste: 0, packCount: 1000 }).boxes.toString()).toBe("1");
  });

  it("five boards on a wall of 20 x 8 ft, against a rule of thumb for interior wallboard", () => {
    // Dagostino and Peterson, Estimating in Building Construction, Ex. 16-3: 1,000 screws to 1,000 ft2, so 160 here.
    const { inputs, expected } = vector("count-wall-20x8-boards-vs-rule");
    const { net } = screwOrder({ boards: Number(inputs.boards), screwsPerBoard: Number(inputs.perBoard), waste: 0, packCount: 1 });
    expectPrinted(net.to(), expected.exact);
    expectPrinted(net.to().div(Number(expected.ruleOfThumb)), expected.ratio);
  });

  it("refuses waste of all and more, boxes of none, and no boards", () => {
    const bad = screwOrder.try({ boards: 0, screwsPerBoard: 0, waste: 1, packCount: 0 });
    expect(bad.ok ? [] : bad.problems.map(({ code, path }) => [code, ...path])).toEqual([
      ["tooLow", "boards"], ["tooLow", "screwsPerBoard"], ["tooHigh", "waste"], ["tooLow", "packCount"],
    ]);
    expect(screwOrder.try({ boards: 1, screwsPerBoard: 1, packCount: 1 })).toMatchObject({ ok: false, problems: [{ code: "missing", path: ["waste"] }] });
  });
});
