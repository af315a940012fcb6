import type { Columns, RowOf } from "./columns.js";
import { readTable, type TableOptions, type TableRow } from "./read-table.js";
import type { RowSource } from "./raw-row.js";

/** The columns of a sheet of walls, each a rectangle. */
export const wallColumns = {
  name: { is: "text", names: ["wall", "name", "elevation", "wall name"], says: "name of the wall" },
  width: { is: "length", names: ["width", "length", "wall width", "wall length"], says: "width of the wall" },
  height: { is: "length", names: ["height", "wall height"], says: "height of the wall" },
} as const satisfies Columns;

/** The columns of a sheet of openings, each a rectangle in a wall that is named. */
export const openingColumns = {
  wall: { is: "text", names: ["wall", "elevation", "in wall"], says: "wall in which the opening is" },
  width: { is: "length", names: ["width", "opening width"], says: "width of the opening" },
  height: { is: "length", names: ["height", "opening height"], says: "height of the opening" },
  count: { is: "count", names: ["count", "number", "how many", "quantity"], says: "how many such openings", optional: true },
  returnDepth: { is: "length", names: ["return", "return depth", "reveal", "depth"], says: "how far the face turns into the opening", optional: true },
  returnUnits: { is: ["corner", "flat"], names: ["return units", "turned with"], says: "units that turn into the opening", optional: true },
  toBase: { is: "yes or no", names: ["to base", "to the base", "door"], says: "whether the opening reaches the foot of the wall", optional: true },
} as const satisfies Columns;

/** The columns of a price list. */
export const priceColumns = {
  item: { is: "text", names: ["item", "material", "description"], says: "item of the order list" },
  perPack: { is: "text", names: ["price", "price per pack", "per pack", "unit price"], says: "price of one pack, with its currency", optional: true },
  each: { is: "text", names: ["each", "price each", "price per piece", "per piece"], says: "price of one piece, with its currency", optional: true },
} as const satisfies Columns;

/** The columns of a sheet of film readings: a spot a row, with as many readings as were taken. */
export const filmReadingColumns = {
  name: { is: "text", names: ["spot", "place", "location", "area"], says: "where it was read", optional: true },
  readings: { is: "length", names: ["reading", "readings", "film", "thickness"], says: "reading of the film", several: true },
} as const satisfies Columns;

/** The columns of a record of temperatures. */
export const temperatureColumns = {
  at: { is: "text", names: ["at", "time", "date", "date and time", "when"], says: "when it was read, as 2026-06-01T08:00" },
  temperature: { is: "temperature", names: ["temperature", "temp", "air", "air temperature"], says: "temperature that was read" },
} as const satisfies Columns;

/**
 * Reads a sheet of walls.
 *
 * @param source - a CSV or a workbook
 * @param options - headings of your own, decimal commas, which sheet
 * @example
 * ```ts
 * const { values } = await allRows(readWalls("wall;width [m];height [m]\nnorth;12,5;2,4\n", { decimalComma: true }));
 * values[0].width.toString(); // "12.5 m"
 * ```
 */
export function readWalls(source: RowSource, options: TableOptions<typeof wallColumns> = {}): AsyncGenerator<TableRow<RowOf<typeof wallColumns>>, void, undefined> {
  return readTable(source, wallColumns, options);
}

/**
 * Reads a sheet of openings, as {@link readWalls} reads walls.
 *
 * @param source - a CSV or a workbook
 * @param options - headings of your own, decimal commas, which sheet
 * @example
 * ```ts
 * const { values } = await allRows(readOpenings("wall,width,height,count\nnorth,3 ft,6 ft 8 in,2\n"));
 * values[0].count.toString(); // "2"
 * ```
 */
export function readOpenings(source: RowSource, options: TableOptions<typeof openingColumns> = {}): AsyncGenerator<TableRow<RowOf<typeof openingColumns>>, void, undefined> {
  return readTable(source, openingColumns, options);
}

/**
 * Reads a price list; a price is a text such as `84.50 USD`.
 *
 * @param source - a CSV or a workbook
 * @param options - headings of your own, decimal commas, which sheet
 * @example
 * ```ts
 * const { values } = await allRows(readPrices("item,price per pack\nbarrier,212.50 USD\n"));
 * values[0].perPack; // "212.50 USD"
 * ```
 */
export function readPrices(source: RowSource, options: TableOptions<typeof priceColumns> = {}): AsyncGenerator<TableRow<RowOf<typeof priceColumns>>, void, undefined> {
  return readTable(source, priceColumns, options);
}

/**
 * Reads a crew's sheet of film readings: what `filmReadingCheck` takes as its spots.
 *
 * @param source - a CSV or a workbook
 * @param options - headings of your own, decimal commas, which sheet
 * @example
 * ```ts
 * const { values } = await allRows(readFilmReadings("spot,reading 1 (mil),reading 2 (mil)\nby the door,16,18\n"));
 * values[0].readings.length; // 2
 * ```
 */
export function readFilmReadings(source: RowSource, options: TableOptions<typeof filmReadingColumns> = {}): AsyncGenerator<TableRow<RowOf<typeof filmReadingColumns>>, void, undefined> {
  return readTable(source, filmReadingColumns, options);
}

/**
 * Reads a record of temperatures: what the functions of timing and weather take as their records.
 *
 * @param source - a CSV or a workbook
 * @param options - headings of your own, decimal commas, which sheet
 * @example
 * ```ts
 * const { values } = await allRows(readTemperatures("time,temperature (degF)\n2026-06-01T08:00,52\n"));
 * values[0].temperature.toString(); // "52 degF"
 * ```
 */
export function readTemperatures(source: RowSource, options: TableOptions<typeof temperatureColumns> = {}): AsyncGenerator<TableRow<RowOf<typeof temperatureColumns>>, void, undefined> {
  return readTable(source, temperatureColumns, options);
}
