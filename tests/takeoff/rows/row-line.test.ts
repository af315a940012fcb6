// A line of an order list in plain numbers, with no more keys than it has something to say.
import { expect, it } from "vitest";
import { quantity } from "../../../src/core/index.js";
import type { OrderLine } from "../../../src/takeoff/order-line.js";
import { rowLinesOf } from "../../../src/takeoff/rows/row-line.js";

const rest = { basis: [], solution: {} };

it("counts and measures come as numbers in the unit that is ordered in", () => {
  const lines = rowLinesOf([
    { item: "foam", layer: "foam board", net: quantity("count", "9.5"), toOrder: quantity("count", 11), packs: quantity("count", 11), ...rest },
    { item: "spare foam", spareOf: "foam", layer: "foam board", net: quantity("count", 0), toOrder: quantity("count", 1), ...rest },
    { item: "rod", layer: "joints", net: quantity("length", "36 in"), toOrder: quantity("length", "4 ft"), ...rest },
  ] as unknown as readonly OrderLine[]);
  expect(lines).toStrictEqual([
    { item: "foam", layer: "foam board", unit: "count", net: 9.5, toOrder: 11, packs: 11 },
    { item: "spare foam", layer: "foam board", unit: "count", net: 0, toOrder: 1, spareOf: "foam" },
    { item: "rod", layer: "joints", unit: "ft", net: 3, toOrder: 4 },
  ]);
  expect([lines, ...lines].every((one) => Object.isFrozen(one))).toBe(true);
});
