// What the compiler takes and what it refuses, for those who call calculations and those who write them.
import { describe, expectTypeOf, it } from "vitest";
import { calculation } from "../../src/core/calculation.js";
import { composed } from "../../src/core/composed.js";
import type { DimensionName } from "../../src/core/dimensions.js";
import type { Quantity } from "../../src/core/quantity.js";
import { quantity } from "../../src/core/read-quantity.js";
import type { Solution } from "../../src/core/solution.js";
import { byHand, order, tank, usual } from "../support/demo.js";

const given = { width: "4 ft", length: "3 ft", filled: "50 %", pail: "1 gal" } as const;

describe("who calls", () => {
  it("writes quantities as people do", () => {
    tank({ ...given, width: "1-5/8 in" });
    tank({ ...given, width: "5 ft 6-3/8 in" });
    tank({ ...given, width: "5' 6-3/8\"" });
    tank({ ...given, width: "18.5 inches" });
    tank({ ...given, width: { value: 4, unit: "ft" } });
    tank({ ...given, width: { value: "3/8", unit: "inches" } });
    tank({ ...given, width: quantity("length", "4 ft") });
    tank({ ...given, filled: 0.5 });
    tank({ ...given, filled: "1/2" });
    tank({ ...given, depth: "2 ft" });
    tank({ ...given, depth: undefined as never });
    order({ net: 70, waste: "10 %" });
    order({ net: "70", lossShare: 0.1 });
    tank.try("anything");
  });

  it("is stopped by a unit of another dimension", () => {
    // @ts-expect-error a volume is no length
    tank({ ...given, width: "3/4 gal" });
    // @ts-expect-error an area is no length
    tank({ ...given, width: { value: 1, unit: "ft2" } });
    // @ts-expect-error an area is no length
    tank({ ...given, width: quantity("area", "1 ft2") });
    // @ts-expect-error a bare number has no unit
    tank({ ...given, width: 4 });
    // @ts-expect-error a text without a unit
    tank({ ...given, width: "4" });
    // @ts-expect-error a number in words
    tank({ ...given, width: "four ft" });
    // @ts-expect-error no such unit
    tank({ ...given, width: "4 furlongs" });
    // @ts-expect-error a temperature is no difference
    quantity("temperatureDifference", quantity("temperature", "40 degF"));
    // @ts-expect-error an area is no length
    quantity("length", quantity("area", "1 ft2"));
  });

  it("is stopped by a key that is missing, misspelt or too many", () => {
    // @ts-expect-error length is missing
    tank({ width: "4 ft", filled: "50 %", pail: "1 gal" });
    // @ts-expect-error lenght is not known
    tank({ ...given, lenght: "3 ft" });
    // @ts-expect-error both of a pair
    order({ net: 70, waste: "10 %", lossShare: "10 %" });
    // @ts-expect-error none of a pair
    order({ net: 70 });
  });

  it("gets quantities of the dimension of each step", () => {
    expectTypeOf(tank(given).floor).toEqualTypeOf<Quantity<"area">>();
    expectTypeOf(tank(given).pails).toEqualTypeOf<Quantity<"count">>();
    expectTypeOf(tank.solve(given)).toExtend<Solution<{ readonly floor: Quantity<"area"> }>>();
    expectTypeOf(tank(given)).not.toHaveProperty("width");
    expectTypeOf<Quantity<"length">>().not.toExtend<Quantity<"area">>();
    expectTypeOf<Quantity<"count">>().not.toExtend<Quantity<"ratio">>();
    expectTypeOf<Quantity<"temperature">>().not.toExtend<Quantity<"temperatureDifference">>();
    // @ts-expect-error an area has no feet
    tank(given).floor.to("ft");
    // @ts-expect-error the answers cannot be changed
    tank(given).floor = quantity("area", "1 ft2");
  });

  it("gets what the Standard Schema types say", () => {
    expectTypeOf<NonNullable<(typeof tank)["~standard"]["types"]>["input"]>().toExtend<{ readonly depth?: unknown }>();
  });
});

const head = { id: "demo.a", title: "A" } as const;
const width = { is: "length", unit: "ft", symbol: "w", says: "width", above: 0 } as const;

describe("who writes a calculation", () => {
  it("is stopped by a misspelt name in a formula", () => {
    // @ts-expect-error widht is no input, constant or step
    calculation({ ...head, given: { width }, steps: { area: { is: "area", unit: "ft2", symbol: "A", formula: "width * widht", basis: byHand } } });
    // @ts-expect-error in a function and brackets too
    calculation({ ...head, given: { width }, steps: { area: { is: "area", unit: "ft2", symbol: "A", formula: "max((width + 2 * widht), -width)", basis: byHand } } });
    // @ts-expect-error no such function
    calculation({ ...head, given: { width }, steps: { area: { is: "area", unit: "ft2", symbol: "A", formula: "log(width)", basis: byHand } } });
    // @ts-expect-error in one of the formulas of a pair
    calculation({ ...head, given: { width }, steps: { area: { is: "area", unit: "ft2", symbol: "A", formula: { width: "width", other: "widht" }, basis: byHand } } });
  });

  it("may write every operator and function", () => {
    calculation({
      ...head,
      given: { width },
      constants: { one: { is: "length", unit: "ft", symbol: "u", value: "1 ft", says: "a foot", basis: byHand } },
      steps: {
        share: { is: "ratio", symbol: "s", formula: "-ln(width / one) - -width / one + 2 * pi * 1.5 ^ (-2 / 3)", basis: byHand },
        least: { is: "ratio", symbol: "l", formula: "min(share, ceil(sqrt(width / one)), 0.5)", basis: byHand },
      },
    });
  });

  it("is stopped by what stands on nothing", () => {
    // @ts-expect-error a step has a basis
    calculation({ ...head, given: { width }, steps: { area: { is: "area", unit: "ft2", symbol: "A", formula: "width * width" } } });
    // @ts-expect-error a default has a basis
    calculation({ ...head, given: { width: { ...width, default: "1 ft" } }, steps: {} });
    // @ts-expect-error a constant has a basis
    calculation({ ...head, given: {}, constants: { one: { is: "length", unit: "ft", symbol: "u", value: "1 ft", says: "a foot" } }, steps: {} });
    calculation({ ...head, given: { width: { ...width, default: "1 ft", basis: usual } }, steps: {} });
  });

  it("is stopped by a unit, a limit or a default of another dimension", () => {
    // @ts-expect-error gal is no unit of length
    calculation({ ...head, given: { width: { ...width, unit: "gal" } }, steps: {} });
    // @ts-expect-error a limit in gallons
    calculation({ ...head, given: { width: { ...width, above: "1 gal" } }, steps: {} });
    // @ts-expect-error a limit without a unit
    calculation({ ...head, given: { width: { ...width, above: 1 } }, steps: {} });
    // @ts-expect-error a default in gallons
    calculation({ ...head, given: { width: { ...width, default: "1 gal", basis: usual } }, steps: {} });
    // @ts-expect-error no such dimension
    calculation({ ...head, given: { width: { ...width, is: "lenght" } }, steps: {} });
    // @ts-expect-error an input says what it is
    calculation({ ...head, given: { width: { is: "length", unit: "ft", symbol: "w" } }, steps: {} });
  });
});

describe("who writes a composed function", () => {
  const made = composed({
    ...head,
    given: {
      width,
      how: { oneOf: ["up", "down"], says: "which way" },
      depth: { is: "length", unit: "ft", symbol: "d", says: "depth", optional: true },
      waste: { is: "ratio", symbol: "w", says: "waste", either: "allowance" },
      loss: { is: "ratio", symbol: "l", says: "loss", either: "allowance" },
      height: { is: "length", unit: "ft", symbol: "h", says: "height", default: "8 ft", basis: usual },
    },
    run: (read) => {
      expectTypeOf(read.width).toEqualTypeOf<Quantity<"length">>();
      expectTypeOf(read.how).toEqualTypeOf<"up" | "down">();
      expectTypeOf(read.depth).toEqualTypeOf<Quantity<"length"> | undefined>();
      expectTypeOf(read.waste).toEqualTypeOf<Quantity<"ratio"> | undefined>();
      expectTypeOf(read.height).toEqualTypeOf<Quantity<"length">>();
      return { how: read.how };
    },
  });

  it("is stopped by a choice that is taken on no ground", () => {
    // @ts-expect-error a default has a basis
    composed({ ...head, given: { how: { oneOf: ["up", "down"], says: "which way", default: "up" } }, run: () => ({}) });
    composed({ ...head, given: { how: { oneOf: ["up", "down"], says: "which way", default: "up", basis: usual } }, run: () => ({}) });
  });

  it("gives a choice as one of its words", () => {
    expectTypeOf(made({ width: "1 ft", how: "up", waste: 0.1 }).how).toEqualTypeOf<"up" | "down">();
    made({ width: "1 ft", how: "up", loss: 0.1, depth: "1 ft", height: "2 ft" });
    // @ts-expect-error no such word
    made({ width: "1 ft", how: "left", waste: 0.1 });
    // @ts-expect-error the choice is missing
    made({ width: "1 ft", waste: 0.1 });
    // @ts-expect-error none of a pair
    made({ width: "1 ft", how: "up" });
  });
});

it("every dimension has a unit that can be written", () => {
  const shownIn = <D extends DimensionName>(dimension: D, text: Parameters<typeof quantity<D>>[1]): Quantity<D> => quantity(dimension, text);
  expectTypeOf(shownIn("permeance", "1 perm")).toEqualTypeOf<Quantity<"permeance">>();
});
