import type { WallBox, WallPoint } from "../boards/placed-board.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum } from "../core/quantity-arithmetic.js";
import { unitSystem } from "../core/units.js";
import { writeQuantity } from "../core/write-quantity.js";
import { chainBelow, chainBeside, chainRoom, type Stop } from "./dimension-lines.js";

type Length = Quantity<"length">;

/** A point on the sheet. */
export type Spot = readonly [x: number, y: number];

/** Where points of the wall lie on the sheet, and how sizes are written. */
export interface Sheet {
  readonly x: (across: Length) => number;
  readonly y: (up: Length) => number;
  readonly scaled: (length: Length) => number;
  readonly text: (length: Length) => string;
}

/** A sheet with the wall on it, its dimensions drawn, and the room they take. */
export interface DimensionedSheet {
  readonly sheet: Sheet;
  readonly dimensions: readonly string[];
  readonly right: number;
  readonly bottom: number;
}

/** The most the wall takes up on the sheet. */
const [mostWide, mostHigh] = [900, 600];
const margin = 16;

/** Places on the wall that get chains of dimensions of their own. */
export interface Places {
  readonly across: readonly Length[];
  readonly up: readonly Length[];
}

/** Puts a wall on a sheet below `top`, with chains of dimensions to the left of it and below. */
export function sheetFor({ wall, openings }: { readonly wall: WallBox; readonly openings: readonly WallBox[] }, top: number, places: Places = { across: [], up: [] }): DimensionedSheet {
  const scale = Math.min(mostWide / wall.width.toNumber("in"), mostHigh / wall.height.toNumber("in"));
  const scaled = (length: Length): number => length.toNumber("in") * scale;
  const across = chainsOf(wall.width, openings.flatMap(({ left, width }) => [left, sum([left, width])]), places.across, scaled);
  const up = chainsOf(wall.height, openings.flatMap(({ bottom, height }) => [bottom, sum([bottom, height])]), places.up, scaled);
  const room = (chains: readonly (readonly Stop[])[]): number => chains.reduce((total, chain) => total + chainRoom(chain), margin);
  const left = margin + room(up);
  const bottom = top + scaled(wall.height);
  const sheet: Sheet = { scaled, x: (place) => left + scaled(place), y: (place) => bottom - scaled(place), text: sizeText };
  const below = across.map((chain, index) => chainBelow(chain.map(({ at, text }) => ({ at: left + at, text })), bottom + room(across.slice(0, index)), bottom));
  const beside = up.map((chain, index) => chainBeside(chain.map(({ at, text }) => ({ at: bottom - at, text })), left - room(up.slice(0, index)), left));
  return { sheet, dimensions: [...below, ...beside], right: left + scaled(wall.width) + margin, bottom: bottom + room(across) };
}

/** One chain with every edge of an opening, one with the places of their own, where there are any, and one for the whole. */
function chainsOf(whole: Length, edges: readonly Length[], own: readonly Length[], scaled: (length: Length) => number): readonly (readonly Stop[])[] {
  const nought = subtract(whole, whole);
  const chain = (places: readonly Length[]): readonly Stop[] => {
    const stops = [nought, ...places, whole].sort(compare).filter((place, index, all) => index === 0 || compare(place, all[index - 1] as Length) !== 0);
    return stops.map((place, index) => ({ at: scaled(place), text: index + 1 < stops.length ? dimensionText(subtract(stops[index + 1] as Length, place)) : "" }));
  };
  return [chain(edges), chain(own), chain([])].filter((stops, index) => index === 2 || stops.length > 2);
}

/** Feet and inches, or millimetres. */
export function dimensionText(length: Length): string {
  return unitSystem(length.unit) === "si" ? writeQuantity(length, { unit: "mm" }).number : writeQuantity(length, { as: "feetInches" }).text;
}

/** Inches or millimetres, without the unit. */
function sizeText(length: Length): string {
  return unitSystem(length.unit) === "si" ? writeQuantity(length, { unit: "mm" }).number : writeQuantity(length, { as: "tape" }).number;
}

/** Where a point of the wall lies. */
export function spotOf({ across, up }: WallPoint, sheet: Sheet): Spot {
  return [sheet.x(across), sheet.y(up)];
}

/** A rectangle of the sheet. */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Where a box of the wall lies. */
export function areaOf({ left, bottom, width, height }: WallBox, sheet: Sheet): Area {
  const [x, y] = [sheet.x(left), sheet.y(bottom)];
  return { left: x, top: y - sheet.scaled(height), right: x + sheet.scaled(width), bottom: y };
}
