// Which text means which unit: every spelling of the table, and how people write them.
import { describe, expect, it } from "vitest";
import { dimensions, type DimensionName } from "../../src/core/dimensions.js";
import { allUnits, findUnit, type UnitCode, unitsOf, unitSymbol } from "../../src/core/units.js";

const codes: readonly UnitCode[] = (Object.keys(dimensions) as DimensionName[]).flatMap((dimension) => unitsOf(dimension));

describe("codes and spellings", () => {
  it("no code stands twice in the table, and none begins with a digit", () => {
    expect(new Set(codes).size).toBe(codes.length);
    expect(codes.filter((code) => /^\d/.test(code))).toEqual([]);
  });

  it.each([...allUnits()].map(({ code, of, spellings }) => [code, of, spellings] as const))("%s of %s is found by each spelling", (code, of, spellings) => {
    for (const spelling of [code, unitSymbol(code), ...spellings].filter((text) => text !== "")) expect([spelling, findUnit(of, spelling)]).toEqual([spelling, code]);
  });

  it.each([
    ["area", "ft2", ["ft²", "ft^2", "sq ft", "sq. ft.", "square feet", "Square Foot", "SQ FT", "sf", "SF"]],
    ["area", "m2", ["m²", "m^2", "sq m", "square metres", "square meters"]],
    ["volume", "yd3", ["yd³", "yd^3", "cu yd", "cubic yards", "cy"]],
    ["volume", "floz", ["fl oz", "fl. oz.", "fluid ounces"]],
    ["volume", "L", ["l", "litre", "liters", "LITRES"]],
    ["length", "in", ["inch", "inches", "IN", "in.", '"', "″"]],
    ["length", "um", ["µm", "micron", "microns", "micrometers"]],
    ["time", "h", ["hr", "hrs", "hour", "hours"]],
    ["spreadingRate", "ft2/gal", ["ft2 / gal", "ft2 per gal", "sq ft/gal", "ft²/gal"]],
    ["arealMass", "lb/ft2", ["psf", "lb per ft2", "lb/sq ft"]],
    ["pressure", "psf", ["lbf/ft2", "lb/ft2"]],
    ["countPerArea", "/ft2", ["per ft2", "/sq ft", "/ ft2"]],
    ["density", "lb/ft3", ["pcf", "PCF", "lb/cu ft"]],
    ["temperature", "degF", ["°F", "F", "degf"]],
    ["temperatureDifference", "degFDifference", ["degF", "°F", "F"]],
    ["evaporation", "lb/ft2/h", ["lb/ft2/hr", "lb/sq ft/h"]],
    ["permeance", "ng/s/m2/Pa", ["ng/(s m2 Pa)"]],
  ] as const)("%s: %s is %j too", (dimension: DimensionName, code, spellings) => {
    for (const spelling of spellings) expect([spelling, findUnit(dimension, spelling)]).toEqual([spelling, code]);
  });

  it.each(["", "gal", "constructor", "__proto__", "toString", "ft3", "in in", "/", "per"])("%j is no length", (text) => {
    expect(findUnit("length", text)).toBeUndefined();
  });
});
