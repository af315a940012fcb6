import { type DimensionName, dimensions } from "../core/dimensions.js";
import { unitsOf, unitSymbol } from "../core/units.js";
import type { JsonSchema } from "../schema/schema-head.js";

/** A quantity of a dimension as JSON has it: the units in which it is shown first, and its limits in words. */
export function quantitySchema(is: DimensionName, shown: readonly string[] = [], limits: readonly string[] = []): JsonSchema {
  return { description: [is, ...limits].join("; "), ...valueWithUnit([...shown, ...unitsOf(is).map(unitSymbol)]) };
}

function valueWithUnit(units: readonly string[]): JsonSchema {
  return {
    type: "object",
    properties: { value: { type: "string", pattern: String.raw`^-?\d+(\.\d+)?(/\d+)?$` }, unit: { enum: [...new Set(units)] } },
    required: ["value", "unit"],
    additionalProperties: false,
  };
}

/** A quantity of the dimension of that name, or of any. */
export function quantityNamed(name: string): JsonSchema {
  const names = Object.keys(dimensions) as DimensionName[];
  const one = names.find((dimension) => dimension === name);
  return one === undefined ? { description: "a quantity of any dimension", ...valueWithUnit(names.flatMap((is) => unitsOf(is).map(unitSymbol))) } : quantitySchema(one);
}
