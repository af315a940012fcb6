// Calculations of no trade, for the tests of the engine; what each gives can be worked out in the head.
import type { Basis } from "../../src/core/basis.js";
import { calculation } from "../../src/core/calculation.js";

export const byHand = { kind: "derived", says: "by hand" } as const satisfies Basis;
export const usual = { kind: "common practice", says: "tanks are usually a foot deep" } as const satisfies Basis;
export const measured = { kind: "published", publisher: "A. Nobody", title: "Of Tanks", edition: "2nd", locator: "p. 7", quotedBy: "B. Other" } as const satisfies Basis;

/** A tank: inputs with limits and a default, a constant, a step with limits, a min, a root. */
export const tank = calculation({
  id: "demo.tank",
  title: "Water in a tank",
  given: {
    width: { is: "length", unit: ["ft", "m"], symbol: "w", says: "inner width", above: 0, atMost: "100 ft" },
    length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "inner length", above: 0, below: "200 ft" },
    depth: { is: "length", unit: ["ft", "m"], symbol: "d", says: "inner depth", atLeast: 0, default: "1 ft", basis: usual },
    filled: { is: "ratio", unit: "%", symbol: "f", says: "share of the depth that is filled", atLeast: 0, atMost: 1 },
    pail: { is: "volume", unit: ["gal", "L"], symbol: "p", says: "volume of a pail", atLeast: 0 },
  },
  constants: {
    density: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "r", value: "62.4 lb/ft3", says: "density of water", basis: measured },
  },
  steps: {
    floor: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "width * length", basis: byHand },
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", formula: "floor * depth * filled", basis: byHand },
    mass: { is: "mass", unit: ["lb", "kg"], symbol: "m", formula: "volume * density", basis: byHand, atMost: "1000000 lb" },
    pails: { is: "count", symbol: "n", says: "whole pails", formula: "ceil(volume / pail)", basis: byHand },
    shortSide: { is: "length", unit: ["ft", "m"], symbol: "s", formula: "min(width, length)", basis: byHand },
    diagonal: { is: "length", unit: ["ft", "m"], symbol: "g", formula: "sqrt(width ^ 2 + length ^ 2)", basis: byHand, differs: "the source rounds it up" },
  },
  cautions: ["A full tank is heavy."],
});

/** Either what is added or what is lost. */
export const order = calculation({
  id: "demo.order",
  title: "What to order",
  given: {
    net: { is: "count", symbol: "N", says: "what is needed", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "on top of the net", atLeast: 0, below: 1, either: "allowance" },
    lossShare: { is: "ratio", unit: "%", symbol: "l", says: "part of what is bought that is lost", atLeast: 0, below: 1, either: "allowance" },
  },
  steps: {
    toOrder: { is: "count", symbol: "O", says: "whole pieces", formula: { waste: "ceil(net * (1 + waste))", lossShare: "ceil(net / (1 - lossShare))" }, basis: byHand },
  },
});
