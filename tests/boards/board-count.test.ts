import { describe, expect, it } from "vitest";
import { boardCount } from "../../src/boards/board-count.js";
import { quantity } from "../../src/core/read-quantity.js";
import { expectPrinted, vector } from "../support/vectors.js";

const fourByEight = { boardWidth: "4 ft", boardHeight: "8 ft" } as const;
const threeByFive = { boardWidth: "3 ft", boardHeight: "5 ft" } as const;

/** The number of a printed figure such as `33 boards`. */
const numberOf = (printed: string | undefined): string => /^\d+/.exec(printed ?? "")?.[0] ?? "none";

describe("boardCount", () => {
  it("counts boards as the textbook does (Pearson, Estimating in Building Construction, 7th ed.)", () => {
    const partition = vector("textbook-boards-interior-75");
    expect(partition.inputs).toEqual({ length: "149 ft", height: "8 ft", sides: "2" });
    // 149 ft x 8 ft x 2 = 2384 ft2; 2384 / 32 = 74.5
    const both = boardCount({ area: "2384 ft2", ...fourByEight, waste: 0 });
    expect(both.net.toString()).toBe("74.5");
    expectPrinted(both.placed.to(), partition.expected.sheets);
    expectPrinted(both.placed.to(), vector("textbook-board").expected.sheets);

    // 24 ft x 50 ft = 1200 ft2; 1200 / 32 = 37.5
    expectPrinted(boardCount({ area: "1200 ft2", ...fourByEight, waste: 0 }).placed.to(), vector("textbook-boards-ceiling-38").expected.sheets);
    // 148 x 8 + 2 x 0.5 x 24 x 3 = 1184 + 72 = 1256 ft2; 1256 / 32 = 39.25
    expectPrinted(boardCount({ area: "1256 ft2", ...fourByEight, waste: 0 }).placed.to(), vector("textbook-sheathing-40").expected.sheets);
  });

  it("orders what the textbook orders where the net is a whole number of boards", () => {
    const order = vector("textbook-boards-waste-118");
    expect(order.inputs).toEqual({ sheets: "112", waste: "5 %" });
    // 112 boards of 32 ft2 are 3584 ft2; 112 x 1.05 = 117.6
    const boards = boardCount({ area: "3584 ft2", ...fourByEight, waste: "5 %" });
    expect(boards.net.toString()).toBe("112");
    expect(boards.withWaste.toString()).toBe("117.6");
    expectPrinted(boards.toOrder.to(), order.expected.order);
  });

  it("rounds once, from the unrounded net: the textbook's rounding twice would order one board more here", () => {
    // 39.25 boards net: 39.25 x 1.02 = 40.035 -> 41; rounded first, 40 x 1.02 = 40.8 -> 41. At 1 %: 39.6425 -> 40, and
    // rounded first 40 x 1.01 = 40.4 -> 41.
    expect(boardCount({ area: "1256 ft2", ...fourByEight, waste: "2 %" }).toOrder.toString()).toBe("41");
    expect(boardCount({ area: "1256 ft2", ...fourByEight, waste: "1 %" }).toOrder.toString()).toBe("40");
  });

  it.each([
    { row: vector("board-order-1"), area: "450 ft2" },
    { row: vector("board-order-2"), area: "900 ft2" },
  ] as const)("lands exactly on a whole number and stays there: $row.id", ({ row, area }) => {
    const boards = boardCount({ area, ...threeByFive, waste: "10 %" });
    expect(row.inputs.waste).toBe("10 %");
    expect(boards.toOrder.toString()).toBe(numberOf(row.expected.boards));
    expect(boardCount({ area: quantity("area", area), ...threeByFive, waste: "10.000001 %" }).toOrder.toString()).toBe(String(Number(numberOf(row.expected.boards)) + 1));
  });

  it("gives the same count in millimetres", () => {
    // 41.806368 m2 is 450 ft2 exactly: 450 x 0.09290304.
    const boards = boardCount({ area: "41.806368 m2", boardWidth: "914.4 mm", boardHeight: "1524 mm", waste: "10 %" });
    expect([boards.net.toString(), boards.placed.toString(), boards.toOrder.toString()]).toEqual(["30", "30", "33"]);
    expect(boards.boardArea.toString()).toBe("1.3935456 m2");
  });

  it("refuses nought, a waste of the whole, and tells of all of it at once", () => {
    const tried = boardCount.try({ area: "0 ft2", boardWidth: "0 ft", boardHeight: "8 lb", waste: "100 %" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")])).toEqual([
      ["tooLow", "area"],
      ["tooLow", "boardWidth"],
      ["wrongDimension", "boardHeight"],
      ["tooHigh", "waste"],
    ]);
    expect(boardCount.try({ area: "1 ft2", ...fourByEight, waste: "-1 %" }).ok).toBe(false);
    expect(boardCount.try({ area: "1 ft2", ...fourByEight }).ok).toBe(false);
    expect(boardCount.try({ area: "1 ft2", ...fourByEight, waste: "99.9 %" }).ok).toBe(true);
  });
});
