import type { UnitCode } from "../../core/units.js";
import type { OrderLine } from "../order-line.js";

/** A line of the order list of a row, in plain numbers: counts are exact, other numbers good to 12 digits. */
export interface RowLine {
  readonly item: string;
  /** The item that this is spare stock of. */
  readonly spareOf?: string;
  readonly layer: string;
  /** The unit of both numbers, by its code. */
  readonly unit: UnitCode;
  /** What ends on the wall. */
  readonly net: number;
  readonly toOrder: number;
  readonly packs?: number;
}

/** What a line is called, and its unit: the same in all rows. */
export type LineHead = Pick<RowLine, "item" | "spareOf" | "layer" | "unit">;

/** The head of a line. */
export function headOf({ item, spareOf, layer, toOrder }: OrderLine): LineHead {
  return { item, layer, unit: toOrder.unit, ...(spareOf === undefined ? {} : { spareOf }) };
}

/** A line in plain numbers. */
export function rowLine({ item, spareOf, layer, unit }: LineHead, net: number, toOrder: number, packs: number | undefined): RowLine {
  // Spreading is too slow here.
  const line: { -readonly [K in keyof RowLine]: RowLine[K] } = { item, layer, unit, net, toOrder };
  if (spareOf !== undefined) line.spareOf = spareOf;
  if (packs !== undefined) line.packs = packs;
  return Object.freeze(line);
}

/** The lines of a list that was worked out by itself. */
export function rowLinesOf(lines: readonly OrderLine[]): readonly RowLine[] {
  return Object.freeze(lines.map((line) => rowLine(headOf(line), line.net.toNumber(line.toOrder.unit as never), line.toOrder.toNumber(), line.packs?.toNumber())));
}
