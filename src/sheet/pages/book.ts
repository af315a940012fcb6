import type { Basis } from "../../core/basis.js";
import type { Quantity } from "../../core/quantity.js";
import type { UnitCode } from "../../core/units.js";
import { legalName, legalTitle, Names } from "../workbook/defined-names.js";
import { fromBaseFormula } from "./figures.js";
import type { LimitBook } from "./limits.js";

/** Where a quantity stands in the workbook. */
interface Place {
  /** The cell, or its name, that holds it in base units. */
  readonly base?: string;
  /** The cell that holds it in its own unit. */
  readonly shown?: string;
}

/** What the sheets of one workbook share: the names and titles given out, the units and sources in use, where each quantity stands. */
export class Book {
  readonly limits: LimitBook;
  readonly #names = new Names(legalName);
  readonly #titles = new Names(legalTitle);
  readonly #units = new Set<UnitCode>();
  readonly #bases: Basis[] = [];
  readonly #places = new Map<Quantity, Place>();

  /** @param limits - the limits that the cells keep */
  constructor(limits: LimitBook) {
    this.limits = limits;
    // Sheets that every workbook has; a calculation of such a title gets a number.
    for (const title of ["Givens", "Units", "Sources"]) this.#titles.take(title);
  }

  /** A title for a sheet, that no other has. */
  title(text: string): string {
    return this.#titles.take(text);
  }

  /** A name for a cell, that no other has. */
  name(text: string): string {
    return this.#names.take(text);
  }

  /** Says that a unit is in use, so that its size stands on the sheet of units. */
  use(unit: UnitCode): UnitCode {
    this.#units.add(unit);
    return unit;
  }

  /** The units in use. */
  get units(): readonly UnitCode[] {
    return [...this.#units];
  }

  /** The number of a source on the sheet of sources. */
  source(basis: Basis | undefined): string {
    if (basis === undefined) return "";
    const same = (one: Basis): boolean => JSON.stringify(one) === JSON.stringify(basis);
    if (!this.#bases.some(same)) this.#bases.push(basis);
    return `[${String(this.#bases.findIndex(same) + 1)}]`;
  }

  /** The sources in use, in the order of their numbers. */
  get sources(): readonly Basis[] {
    return this.#bases;
  }

  /** Notes where a quantity stands. */
  put(quantity: Quantity, place: Place): void {
    this.#places.set(quantity, { ...this.#places.get(quantity), ...place });
  }

  /** A formula that gives a quantity in base units; nothing where it stands nowhere. */
  baseOf(quantity: Quantity): string | undefined {
    return this.#places.get(quantity)?.base;
  }

  /** A formula that gives a quantity in its own unit; nothing where it stands nowhere. */
  shownOf(quantity: Quantity): string | undefined {
    const { base, shown } = this.#places.get(quantity) ?? {};
    return shown ?? (base === undefined ? undefined : fromBaseFormula(base, this.use(quantity.unit)));
  }
}
