// Figures at their very edge, and more of a thing than can be cut.
import { describe, expect, it } from "vitest";
import { boardLayers } from "../../src/boards/board-layers.js";
import { cutStock } from "../../src/boards/cut-stock.js";
import { faults } from "../support/faults.js";

describe("cutStock", () => {
  it("adds up what is left of every piece", () => {
    // Two lengths of 50 in, each from 60 in: 10 in are left of each.
    const cutting = cutStock({ wanted: [{ length: "50 in", count: 2 }], stock: ["60 in"], sawCut: "0 in" });
    expect([cutting.stockLength, cutting.offcuts, cutting.wantedLength].map((length) => length.to("in").toString())).toEqual(["120", "20", "100"]);
  });

  it("takes up to 100 lengths", () => {
    const job = (count: number): object => ({ wanted: Array.from({ length: count }, () => ({ length: "10 in", count: 1 })), stock: ["10 ft"], sawCut: "0 in" });
    expect(cutStock.try(job(100)).ok).toBe(true);
    expect(faults(cutStock.try(job(101)))).toEqual(["refused wanted"]);
    expect(faults(cutStock.try(job(0)))).toEqual(["refused wanted"]);
    const stock = (count: number): object => ({ wanted: [{ length: "10 in", count: 1 }], stock: Array.from({ length: count }, (_, index) => `${String(10 + index)} in`), sawCut: "0 in" });
    expect([faults(cutStock.try(stock(20))), faults(cutStock.try(stock(21)))]).toEqual([[], ["refused stock"]]);
  });
});

describe("boardLayers", () => {
  it("takes one layer, and wants one", () => {
    const layer = { board: { width: "4 ft", length: "8 ft" }, orientation: "upright", stagger: "0 in" };
    const job = (count: number): object => ({
      wall: { kind: "rectangle", width: "20 ft", height: "8 ft" }, openings: [], studs: { spacing: "16 in", start: "16 in" }, edgesBacked: false, reuseOffcuts: false,
      layers: Array.from({ length: count }, () => layer), leastOffset: "16 in",
    });
    expect(boardLayers.try(job(1)).ok).toBe(true);
    expect(faults(boardLayers.try(job(0)))).toEqual(["refused layers"]);
  });
});
