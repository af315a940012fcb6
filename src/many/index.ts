/**
 * Many rows at once: the same counts as a single call, at about the cost of plain numbers.
 *
 * @packageDocumentation
 */
export { type AnswerColumn, type AnswerUnits, type Column, type Columns, type Many, type Numbers, solveMany } from "./solve-many.js";
export type { RowProblems } from "./solve-columns.js";
export { solveRows } from "./solve-rows.js";
