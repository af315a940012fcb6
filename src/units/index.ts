/**
 * Units for menus and for reading: their names, and the same quantity in another unit.
 *
 * @packageDocumentation
 */
export { bestUnit, inUnit } from "./in-unit.js";
export { type UnitEntry, unitList } from "./unit-list.js";
export { type UnitName, unitName } from "./unit-names.js";
