// A line worked by hand, beside the line of a take-off: what stands on the wall as a fraction, and the argument of every
// round-up as a fraction, with the whole number that comes out.
import { expect } from "vitest";
import type { OrderLine } from "../../src/takeoff/index.js";

/** Above and below the stroke, and the whole number that the fraction is rounded up to. */
export type Rounded = readonly [above: number, below: number, up: number];

export interface ByHand {
  /** The net as a fraction, in the unit. */
  readonly net: readonly [above: number, below: number];
  /** The unit of the net; none for a count. */
  readonly unit?: string;
  /** What is rounded up to whole pieces. */
  readonly pieces?: Rounded;
  /** What is rounded up to whole packs. */
  readonly packs?: Rounded;
}

/** Rounds a fraction up in whole numbers alone, without any of the package. */
function roundedUp([above, below]: Rounded): number {
  const [a, b] = [BigInt(above), BigInt(below)];
  return Number((a + b - 1n) / b);
}

/** A round-up whose argument is a whole number: binary numbers or decimals may get it wrong. */
export function isWhole([above, below]: Rounded): boolean {
  return BigInt(above) % BigInt(below) === 0n;
}

export function expectLine(line: OrderLine, { net: [above, below], unit, pieces, packs }: ByHand): void {
  expect(line.net.to(unit as never).times(below).toSignificantDigits(30).toString()).toBe(String(above));
  for (const rounded of [pieces, packs]) if (rounded !== undefined) expect(roundedUp(rounded)).toBe(rounded[2]);
  if (pieces !== undefined) expect(line.toOrder.to().toString()).toBe(String(pieces[2]));
  if (packs !== undefined) expect(line.packs?.to().toString()).toBe(String(packs[2]));
}

export function lineOf(lines: readonly OrderLine[], item: string): OrderLine {
  const line = lines.find((one) => one.item === item);
  if (line === undefined) throw new Error(`no line of ${item}; there are ${lines.map((one) => one.item).join(", ")}`);
  return line;
}

/** The line of every item that is worked by hand, and no other. */
export function expectAll(lines: readonly OrderLine[], byHand: Readonly<Record<string, unknown>>, besides: readonly string[] = []): void {
  expect(new Set(lines.map(({ item }) => item))).toEqual(new Set([...Object.keys(byHand), ...besides]));
}
