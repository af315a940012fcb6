import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity, type Readable } from "../core/read-quantity.js";
import { limitCaution, veneerEditions, type VeneerClass } from "../data/limits.js";
import { rectangle } from "../shapes/rectangle.js";
import { judge, type Judged } from "./judge.js";
import { loadOfWeight } from "./load-of-weight.js";

/** A unit held against the limits of one edition. */
export interface VeneerLimits {
  readonly edition: string;
  /** Load, thickness, side and face, each with its limit. */
  readonly checks: readonly Judged[];
  /** What is over or under its limit, in words. */
  readonly outside: readonly string[];
  /** What no limit is on file for, in words. */
  readonly notOnFile: readonly string[];
}

/**
 * A unit of adhered veneer held against the limits of a named edition: weight of the unit alone, thickness, longest side and
 * face. Each is within, over, under or not on file; a figure from memory is told and decides nothing.
 *
 * @example
 * ```ts
 * const unit = { unitWeight: "15.6 psf", thickness: "1-1/4 in", unitLength: "18 in", unitHeight: "8 in" } as const;
 * veneerLimits({ ...unit, edition: "1970s code" }).outside[0]; // "load of the unit alone: 15.6 psf is over 15 psf"
 * veneerLimits({ ...unit, edition: "TMS 402-22" }).outside.length; // 0
 * veneerLimits({ ...unit, edition: "TMS 402-22" }).notOnFile.length; // 5
 * ```
 */
export const veneerLimits = /* @__PURE__ */ composed({
  id: "limits.veneer-limits",
  title: "Limits of adhered veneer by edition",
  cautions: [limitCaution, "The weight is that of the unit alone: some limits are meant for the veneer as installed, with its mortar."],
  given: {
    edition: { oneOf: ["1970s code", "TMS 402-13/16", "TMS 402-22", "SBC 201", "SBC 201, porcelain tile", "IBC, porcelain tile"], says: "edition whose limits are wanted; no other is on file" },
    unitWeight: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "W_u", says: "weight of the unit alone per area of its face, soaked where the edition means that", above: 0 },
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t", says: "thickness of the unit at its thickest for a most, at its thinnest for a least", above: 0 },
    unitLength: { is: "length", unit: ["in", "mm"], symbol: "L", says: "greatest face length of the unit", above: 0 },
    unitHeight: { is: "length", unit: ["in", "mm"], symbol: "H", says: "greatest face height of the unit", above: 0 },
  },
  run: ({ edition, unitWeight, thickness, unitLength, unitHeight }, work): VeneerLimits => {
    const { load } = work.part(loadOfWeight, { weight: unitWeight }, ["unitWeight"]).answers;
    const { area } = work.part(rectangle, { width: unitLength, height: unitHeight }).answers;
    const side = compare(unitLength, unitHeight) < 0 ? unitHeight : unitLength;
    const { basis, mostLoad, mostThickness, leastThickness, mostSide, mostArea } = classFor(load, veneerEditions[edition]);
    const checks = [
      judge("load of the unit alone", load, { most: mostLoad, basis }, work),
      judge("greatest thickness", thickness, { most: mostThickness, basis }, work),
      judge("least thickness", thickness, { least: leastThickness, basis }, work),
      judge("longest side", side, { most: mostSide, basis }, work),
      judge("face", area, { most: mostArea, basis }, work),
    ];
    const says = (...verdicts: readonly Judged["verdict"][]): readonly string[] => checks.filter(({ verdict }) => verdicts.includes(verdict)).map((check) => check.says);
    return { edition, checks, outside: says("over", "under"), notOnFile: says("not on file") };
  },
});

/** The first class whose load the unit keeps to; else the last, which it is too heavy for. */
function classFor(load: Quantity<"pressure">, classes: readonly VeneerClass[]): VeneerClass {
  const holds = ({ mostLoad }: VeneerClass): boolean => mostLoad === undefined || compare(load, quantity("pressure", mostLoad as Readable<"pressure">)) <= 0;
  return classes.find(holds) ?? (classes.at(-1) as VeneerClass);
}
