/** The clock and the calendar. They are an entry of the build, so that they stay out of the file that timing's formulas are in. */
export { Temporal } from "temporal-polyfill";
