import type { SamplesOf } from "./index.js";

export const sheet: SamplesOf<"sheet"> = {
  tooManyColumns: { most: 1000 },
  rowTooLong: { most: 1000000 },
  headings: { headings: ["\"Width\"", "\"Ancho\""] },
  noSuchColumn: { column: "\"Width\"", columns: ["\"Height\""] },
  didYouMean: { names: ["\"width\""] },
  nameAColumn: { names: ["\"width\""] },
  beyondNamedColumns: { count: 6 },
  columnNumber: { column: 3 },
  workbookTooLarge: { most: 32 },
  noSuchSheet: { sheets: ["Walls", "Openings"] },
  sheetTooWide: { most: 1000 },
};
