import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { subtract, sum, times } from "../core/quantity-arithmetic.js";

/** Edges of returns that are set with corner units, all of one depth. */
export interface ReturnEdges {
  readonly edgeHeight: Quantity<"length">;
  readonly returnDepth: Quantity<"length">;
  readonly path: Path;
}

/** A straight run that sheets are laid along: how long, how high, how often. */
export interface SheetFace {
  readonly length: Quantity<"length">;
  readonly height: Quantity<"length">;
  readonly count: Quantity<"count">;
}

/** What is measured on an elevation, on the columns of one kind, or on the whole job, before any layer is looked at. */
export interface Measures {
  readonly walls: Quantity<"area">;
  readonly openings: Quantity<"area">;
  /** Undersides that are clad. */
  readonly soffits: Quantity<"area">;
  /** Returns of the face into the openings. */
  readonly returns: Quantity<"area">;
  /** Round all walls and soffits and round all openings. */
  readonly outline: Quantity<"length">;
  /** Length of the foot of the walls, openings that reach it out. */
  readonly base: Quantity<"length">;
  /** Heights of outside corners between two clad faces of the job. */
  readonly cladCorners: Quantity<"length">;
  /** Heights of outside corners round which nothing is clad. */
  readonly uncladCorners: Quantity<"length">;
  /** Heights of inside corners between two clad faces. */
  readonly insideCorners: Quantity<"length">;
  /** Heights of inside corners against something that is not clad. */
  readonly uncladInsideCorners: Quantity<"length">;
  /** Edges at which the face turns into openings. */
  readonly returnEdges: Quantity<"length">;
  readonly sills: Quantity<"length">;
  readonly jambs: Quantity<"length">;
  readonly heads: Quantity<"length">;
  readonly roundOpenings: Quantity<"length">;
  readonly caps: Quantity<"length">;
  /** Lengths of the soffits along their walls. */
  readonly soffitLengths: Quantity<"length">;
}

const areas = ["walls", "openings", "soffits", "returns"] as const;
const lengths = [
  "outline", "base", "cladCorners", "uncladCorners", "insideCorners", "uncladInsideCorners", "returnEdges", "sills", "jambs", "heads", "roundOpenings", "caps", "soffitLengths",
] as const;

/** What is counted and not measured besides. */
export interface Counts {
  /** Sills of openings, for what goes past their ends. */
  readonly sillCount: Quantity<"count">;
  readonly headCount: Quantity<"count">;
}

/** One elevation, or the columns of one kind. */
export interface Part extends Measures, Counts {
  readonly name: string;
  readonly cornerReturns: readonly ReturnEdges[];
  readonly sheetFaces: readonly SheetFace[];
}

/** The same of several parts together. */
export function together(parts: readonly Part[]): Omit<Part, "name"> {
  const added = Object.fromEntries([
    ...areas.map((key) => [key, sum(parts.map((part) => part[key]))] as const),
    ...lengths.map((key) => [key, sum(parts.map((part) => part[key]))] as const),
  ]) as unknown as Measures;
  const count = (key: keyof Counts): Quantity<"count"> => sum(parts.map((part) => part[key]));
  return {
    ...added,
    sillCount: count("sillCount"),
    headCount: count("headCount"),
    cornerReturns: parts.flatMap(({ cornerReturns }) => cornerReturns),
    sheetFaces: parts.flatMap(({ sheetFaces }) => sheetFaces),
  };
}

/** Nought in the unit of a quantity, so that what is added to it is shown in the units of the job. */
export function noughtOf<D extends "length" | "area">(quantity: Quantity<D>): Quantity<D> {
  return subtract(quantity, quantity);
}

/** Lengths, each so many times. */
export function lengthOf(items: readonly { readonly length: Quantity<"length">; readonly count: Quantity<"count"> }[], none: Quantity<"length">): Quantity<"length"> {
  return sum([none, ...items.map(({ length, count }) => times(length, count))]);
}
