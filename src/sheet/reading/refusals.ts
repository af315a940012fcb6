import { sentence, wordsFrom } from "../../core/refusals.js";

/** Why a sheet cannot be read, in English. */
export const sheetRefusals = {
  quoteWithinText: () => 'a quote stands within a text in quotes; write it twice there, as ""',
  quoteDoesNotEnd: () => "a quote in it does not end",
  tooManyColumns: ({ most }: { most: number }) => sentence`it has more than ${most} columns; is this a CSV?`,
  rowTooLong: ({ most }: { most: number }) => sentence`it is longer than ${most} letters; is this a CSV?`,
  headings: ({ headings }: { headings: readonly string[] }) => sentence`${headings.join(" and ")}`,
  sameColumn: () => "they are the same column; say which one is meant",
  noSuchColumn: ({ column, columns }: { column: string; columns: readonly string[] }) => sentence`the sheet has no column ${column}; it has ${columns}`,
  didYouMean: ({ names }: { names: readonly string[] }) => sentence`did you mean ${names.join(" or ")}?`,
  nameAColumn: ({ names }: { names: readonly string[] }) => sentence`name a column ${names.join(" or ")}`,
  pointNotComma: () => "it has a point, though decimals are told to have a comma",
  beyondNamedColumns: ({ count }: { count: number }) => sentence`it stands beyond the ${count} columns that have a name; is there a comma within a cell?`,
  firstRowEmpty: () => "the first row has the names of the columns; it is empty",
  columnNumber: ({ column }: { column: number }) => sentence`column ${column}`,
  hasNoName: () => "it has no name",
  standsTwice: () => "it stands there twice",
  bytesThatNoTextHas: () => "the file holds bytes that no text has; it is no CSV",
  noUtf8: () => "the file is no text in UTF-8; save it so",
  workbookFromText: () => "a workbook is read from bytes, not from text",
  workbookTooLarge: ({ most }: { most: number }) => sentence`the workbook is larger than ${most} MB; save the sheet as CSV, which may be of any size`,
  unpacksToTooMuch: () => "it unpacks to more than a workbook holds",
  brokenWorkbook: () => "the workbook is broken, or no workbook; open it and save it again",
  zipButNoWorkbook: () => "the file is a zip, but no workbook",
  noSuchSheet: ({ sheets }: { sheets: readonly string[] }) => sentence`the workbook has no such sheet; it has ${sheets}`,
  textsTooLong: () => "the texts of the workbook are too long together; save the sheet as CSV, which may be of any size",
  sheetNotInIt: () => "the workbook names a sheet that is not in it; open it and save it again",
  sheetTooWide: ({ most }: { most: number }) => sentence`the sheet has more than ${most} columns`,
  hasDocumentType: () => "it has a document type, which a workbook has not",
  cannotBeRead: () => "it cannot be read; open the workbook and save it again",
  textTooLong: () => "a text in it is longer than a cell holds",
};

/** Words a refusal of this room. */
export const say = /* @__PURE__ */ wordsFrom("sheet", sheetRefusals);
