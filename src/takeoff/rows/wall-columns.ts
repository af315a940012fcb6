import type { DimensionName } from "../../core/dimensions.js";
import type { Path } from "../../core/problems.js";
import { isQuantity } from "../../core/quantity.js";
import { inSmallUnit, type QuickReader, quickReader, readQuickly } from "../../many/quick-text.js";
import type { TracedColumn } from "../../many/traced-rows.js";
import { cellOf, cellTrouble, countColumn, type FilledPlace, isFromColumn, isList, isNone, valueAt, type WallPattern } from "./fill-wall.js";
import { Form } from "./form.js";
import type { RowRead } from "./read-row.js";

/** What a column holds: names, which change nothing; words, on which the way of working depends; quantities; nothing where two places want different things of it. */
type Kind = "names" | "words" | "unclear" | { readonly dimension: DimensionName; readonly reader: QuickReader };

/** A place to be filled, or an entry of a list that a cell may leave out. */
type Place = { readonly column: number } | { readonly counted: number; readonly inner: readonly Place[] };

/** On the way to a form there is one step for each word and each unit. */
interface Way {
  readonly next: Map<unknown, Way>;
  form?: Form;
}

/** So many ways and forms are kept; rows of further forms are worked out one by one. */
const mostWays = 4000;
const mostForms = 256;
const longestName = 80;

/** The columns that a wall is filled from: reads rows into forms, which hold what is alike and the numbers of what is not. */
export class WallColumns {
  readonly names: readonly string[];
  readonly #places: readonly Place[];
  readonly #kinds: (Kind | undefined)[] = [];
  readonly #rows: number;
  readonly #first: Way = { next: new Map() };
  #ways = 0;
  #forms = 0;
  /** By column, the last row that it was read in. */
  readonly #readIn: (RowRead | undefined)[] = [];
  // What is read of the row at hand: how many quantities, and which.
  #found = 0;
  readonly #columns: TracedColumn[] = [];
  readonly #numbers: number[] = [];

  constructor(pattern: WallPattern, rows: number) {
    const names: string[] = [];
    const column = (name: string): number => (names.includes(name) ? names.indexOf(name) : names.push(name) - 1);
    const placesOf = (part: WallPattern): readonly Place[] => {
      if (typeof part !== "object") return [];
      if (isList(part)) {
        return part.flatMap((entry): readonly Place[] => {
          const inner = placesOf(entry);
          const counted = countColumn(entry);
          return counted === undefined ? inner : [{ counted: column(counted), inner }];
        });
      }
      if (isFromColumn(part)) return [{ column: column(part.column) }];
      return Object.values(part).flatMap(placesOf);
    };
    this.#places = placesOf(pattern);
    this.names = names;
    this.#rows = rows;
  }

  /** Learns from a wall that was read what its columns hold. */
  learn(places: readonly FilledPlace[], wall: unknown): void {
    for (const { column, path } of places) {
      const at = this.names.indexOf(column);
      const found = kindAt(path, wall);
      const known = this.#kinds[at];
      const same = known === undefined || known === found || (typeof known === "object" && typeof found === "object" && known.dimension === found.dimension);
      this.#kinds[at] = same ? found : "unclear";
    }
  }

  /**
   * Reads a row into its form, and tells it so; what only the full reader can read has none.
   *
   * @param forms - those of the block so far
   */
  read(row: RowRead, forms: Set<Form>): void {
    this.#found = 0;
    const way = this.#walk(this.#places, row, this.#first);
    if (way === undefined || (way.form === undefined && this.#forms >= mostForms)) return;
    if (way.form === undefined) {
      this.#forms += 1;
      way.form = new Form(this.#columns.slice(0, this.#found), this.#rows);
    }
    const { form } = way;
    if (!forms.has(form)) form.clear();
    forms.add(form);
    row.at = form.add(this.#numbers);
    row.form = form;
  }

  #walk(places: readonly Place[], row: RowRead, from: Way): Way | undefined {
    let way: Way | undefined = from;
    for (const place of places) {
      if ("counted" in place) {
        const count = cellOf(row.cells, this.names[place.counted] as string);
        const none = isNone(count);
        row.kept[place.counted] = count;
        way = this.#step(way, none);
        if (way !== undefined && !none) way = this.#walk(place.inner, row, way);
      } else if (this.#readIn[place.column] !== row) {
        this.#readIn[place.column] = row;
        way = this.#cell(place.column, row, way);
      }
      if (way === undefined) return undefined;
    }
    return way;
  }

  #cell(column: number, { cells, kept }: RowRead, way: Way): Way | undefined {
    const [name, kind] = [this.names[column] as string, this.#kinds[column]];
    const cell = cellOf(cells, name);
    kept[column] = cell;
    if (kind === "names") return typeof cell === "string" && cell.length <= longestName && cellTrouble(cell, name) === undefined ? way : undefined;
    if (kind === "words") return typeof cell === "object" || cellTrouble(cell, name) !== undefined ? undefined : this.#step(way, cell);
    if (typeof kind !== "object" || !readQuickly(kind.reader, kind.dimension, cell)) return undefined;
    inSmallUnit(kind.reader);
    const { number, unit } = kind.reader;
    this.#columns[this.#found] = { name, unit };
    this.#numbers[this.#found] = number;
    this.#found += 1;
    return this.#step(way, unit);
  }

  #step(way: Way, key: unknown): Way | undefined {
    const known = way.next.get(key);
    if (known !== undefined || this.#ways >= mostWays) return known;
    this.#ways += 1;
    const made: Way = { next: new Map() };
    way.next.set(key, made);
    return made;
  }
}

function kindAt(path: Path, wall: unknown): Kind {
  if (path.at(-1) === "name") return "names";
  const value = valueAt(path, wall);
  return isQuantity(value) ? { dimension: value.dimension, reader: quickReader(value.dimension) } : "words";
}
