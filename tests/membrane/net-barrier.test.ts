import { describe, expect, it } from "vitest";
import { netBarrier } from "../../src/membrane/net-barrier.js";

const walls = { gross: "1200 ft2", deducted: "180 ft2", openingReturns: "46 ft2", edgeReturns: "20 ft2" } as const;

describe("netBarrier", () => {
  it("1200 - 180 + 46 + 20 = 1086 ft2", () => {
    const { face, returns, net } = netBarrier(walls);
    expect([face, returns, net].map(String)).toEqual(["1020 ft2", "66 ft2", "1086 ft2"]);
  });

  it("refuses to deduct more than there is, and a barrier of nothing", () => {
    const codes = (input: object): readonly unknown[] => {
      const tried = netBarrier.try({ ...walls, ...input });
      return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")]);
    };
    expect(codes({ deducted: "1200.1 ft2" })).toEqual([["tooLow", "face"]]);
    expect(codes({ deducted: "1200 ft2" })).toEqual([]);
    expect(codes({ deducted: "1200 ft2", openingReturns: "0 ft2", edgeReturns: "0 ft2" })).toEqual([["tooLow", "net"]]);
  });
});
