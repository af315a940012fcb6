// The dimension check: what goes together, and a message that names both sides where it does not.
import { describe, expect, it } from "vitest";
import { checkDimension, dimensions, type DimensionName } from "../../src/core/dimensions.js";
import { parseFormula } from "../../src/core/formula.js";

const names = new Map<string, DimensionName>([
  ["length", "length"], ["width", "length"], ["area", "area"], ["volume", "volume"], ["mass", "mass"], ["share", "ratio"], ["pieces", "count"], ["angle", "angle"],
  ["air", "temperature"], ["surface", "temperature"], ["margin", "temperatureDifference"], ["speed", "speed"], ["oneMph", "speed"], ["onePsf", "pressure"],
  ["density", "density"], ["force", "force"], ["pressure", "pressure"], ["rate", "spreadingRate"], ["expansion", "expansion"], ["time", "time"],
]);
const check = (formula: string, declared: DimensionName) => (): void => {
  checkDimension(parseFormula(formula), declared, names);
};

describe("what goes together", () => {
  it.each([
    ["length * width", "area"],
    ["area * length", "volume"],
    ["volume / area", "length"],
    ["area / rate", "volume"],
    ["1 / length", "spreadingRate"],
    ["1 / length", "lengthPerArea"],
    ["length / area", "countPerLength"],
    ["pieces * share", "ratio"],
    ["ceil(area / (length * width))", "count"],
    ["length + min(width, length)", "length"],
    ["sqrt(area)", "length"],
    ["area ^ 0.5 * length ^ 2", "volume"],
    ["volume ^ (2 / 3)", "area"],
    ["force / area", "pressure"],
    ["0.00256 * onePsf * (speed / oneMph) ^ 2", "pressure"],
    ["density * speed ^ 2", "pressure"],
    ["exp(-time / (2 * time))", "ratio"],
    ["length * expansion * (air - surface)", "length"],
    ["length - length", "length"],
  ] as const)("%s gives %s", (formula, declared) => {
    expect(check(formula, declared)).not.toThrow();
  });
});

describe("temperatures are points on a scale", () => {
  it.each([
    ["air - surface", "temperatureDifference"],
    ["air + margin", "temperature"],
    ["margin + air", "temperature"],
    ["air - margin", "temperature"],
    ["min(air, surface)", "temperature"],
    ["max(margin, air - surface)", "temperatureDifference"],
    ["2 * (air - surface) + margin", "temperatureDifference"],
    ["(air - surface) / margin", "ratio"],
    ["air + (surface - air) / 2", "temperature"],
  ] as const)("%s gives %s", (formula, declared) => {
    expect(check(formula, declared)).not.toThrow();
  });

  it.each([
    ["air + surface", "temperature", '"air + surface": adds two temperatures'],
    ["margin - air", "temperatureDifference", '"margin - air": takes a temperature from a temperature difference'],
    ["2 * air", "temperature", '"2 * air": multiplies or divides a temperature; take a temperature difference'],
    ["air / surface", "ratio", "multiplies or divides a temperature"],
    ["-air", "temperature", '"-air": a temperature has no negative'],
    ["air ^ 2", "temperature", "raises a temperature to a power"],
    ["sqrt(air)", "temperature", "takes the root of a temperature"],
    ["exp(air)", "ratio", "exp takes a bare number, not temperature"],
    ["min(air, margin)", "temperature", '"min(air, margin)": compares temperature and temperatureDifference'],
    ["air - surface", "temperature", '"air - surface" gives temperatureDifference, but is declared temperature'],
    ["air + margin", "temperatureDifference", '"air + margin" gives temperature, but is declared temperatureDifference'],
    ["margin", "temperature", '"margin" gives temperatureDifference, but is declared temperature'],
  ] as const)("%s as %s is refused", (formula, declared, message) => {
    expect(check(formula, declared)).toThrow(message);
  });
});

describe("angles", () => {
  it.each([
    ["length * sin(angle)", "length"],
    ["sin(2 * angle / 3)", "ratio"],
    ["sin(angle + angle)", "ratio"],
    ["asin(length / width)", "angle"],
    ["pi / 2 - angle", "angle"],
    ["length * angle", "length"],
    ["length ^ 2 * (angle - sin(angle)) / 2", "area"],
    ["angle / angle", "ratio"],
    ["angle", "ratio"],
  ] as const)("%s gives %s", (formula, declared) => {
    expect(check(formula, declared)).not.toThrow();
  });

  it.each([
    ["sin(share)", "ratio", '"sin(share)": takes the sine of ratio or count or angle; it wants an angle'],
    ["sin(30)", "ratio", "it wants an angle"],
    ["sin(length)", "ratio", "takes the sine of length; it wants an angle"],
    ["sin(angle / angle)", "ratio", "it wants an angle"],
    ["sin(angle * angle)", "ratio", "it wants an angle"],
    ["asin(angle * length)", "angle", "asin takes a bare number, not length"],
    ["share", "angle", '"share" gives ratio or count or angle, but is declared angle'],
    ["length / width", "angle", "but is declared angle"],
    ["angle", "length", '"angle" gives angle, but is declared length'],
    ["sqrt(share)", "angle", "but is declared angle"],
    ["exp(share)", "angle", "but is declared angle"],
  ] as const)("%s as %s is refused", (formula, declared, message) => {
    expect(check(formula, declared)).toThrow(message);
  });
});

describe("what does not go together is named on both sides", () => {
  it.each([
    ["length * width * length", "area", '"length * width * length" gives volume, but is declared area'],
    ["length + area", "length", '"length + area": adds length and area'],
    ["length - share", "length", '"length - share": subtracts length and ratio or count or angle'],
    ["1 + length", "ratio", "adds ratio or count or angle and length"],
    ["min(length, area, length)", "length", "compares length and area and length"],
    ["ceil(length)", "length", '"ceil(length)": ceil takes a bare number, not length'],
    ["round(air - surface)", "ratio", "round takes a bare number, not temperatureDifference"],
    ["ln(area)", "ratio", "ln takes a bare number, not area"],
    ["length ^ 4", "volume", '"length ^ 4" gives length^4, but is declared volume'],
    ["mass * length", "mass", '"mass * length" gives length^1 mass^1, but is declared mass'],
    ["1 / length", "length", '"1 / length" gives spreadingRate or countPerLength or lengthPerArea, but is declared length'],
    ["nowhere", "length", '"nowhere": this name has no dimension'],
  ] as const)("%s as %s", (formula, declared, message) => {
    expect(check(formula, declared)).toThrow(message);
  });
});

it("only a temperature and its difference share powers that are not those of a bare number or of a length below", () => {
  const alike = Object.entries(dimensions).filter(([name, powers]) => Object.entries(dimensions).some(([other, theirs]) => other !== name && theirs.join() === powers.join()));
  expect(alike.map(([name]) => name)).toEqual(["ratio", "count", "angle", "temperature", "temperatureDifference", "spreadingRate", "countPerLength", "lengthPerArea"]);
});
