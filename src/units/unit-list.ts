import type { DimensionName } from "../core/dimensions.js";
import { type System, type UnitCode, unitSymbol, unitSystem } from "../core/units.js";
import { converter } from "./converter.js";

/** What a menu of units shows of one. */
export interface UnitEntry {
  readonly unit: UnitCode;
  readonly dimension: DimensionName;
  readonly system: System | "both";
  readonly symbol: string;
  readonly singular: string;
  readonly plural: string;
}

/**
 * The units of a dimension, for a menu; all units without one.
 *
 * @throws Error where the dimension is not known
 * @example
 * ```ts
 * unitList("spreadingRate").map(({ plural }) => plural); // ["square feet per gallon", "square metres per litre"]
 * ```
 */
export function unitList(dimension?: DimensionName): readonly UnitEntry[] {
  return Object.freeze(
    converter()
      .list(dimension)
      .map(({ abbr, measure, singular, plural }) => {
        const unit = abbr as UnitCode;
        return Object.freeze({ unit, dimension: measure as DimensionName, system: unitSystem(unit), symbol: unitSymbol(unit), singular, plural });
      }),
  );
}
