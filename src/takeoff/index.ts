/**
 * The whole wall: from its elevations and layers to the order list, each line with its worked solution.
 *
 * @packageDocumentation
 */
export { backingFace } from "./backing-face.js";
export { columnFaces } from "./column-faces.js";
export type { InputChange } from "./compare-inputs.js";
export type { LineChange } from "./compare-lines.js";
export { compareTakeOffs, type ExplainedChange } from "./compare-take-offs.js";
export { cornerPacks } from "./corner-packs.js";
export { courseHeight } from "./course-height.js";
export { deliveredWeight } from "./delivered-weight.js";
export { edgeBacking } from "./edge-backing.js";
export { faceGrowth } from "./face-growth.js";
export { faceLoss } from "./face-loss.js";
export type { FaceMeasures } from "./face-measures.js";
export { fastenersByArea } from "./fasteners-by-area.js";
export type { Cells, FromColumn, WallPattern } from "./rows/fill-wall.js";
export { hoistTrips } from "./hoist-trips.js";
export type { Assembly, Job } from "./job.js";
export { paidHours } from "./paid-hours.js";
export { lathSheets } from "./lath-sheets.js";
export { linePrice } from "./line-price.js";
export type { Check } from "./lists/checks.js";
export type { LabourLine } from "./lists/labour.js";
export type { Costs, PriceLine } from "./lists/told-prices.js";
export type { WeightLine } from "./lists/weights.js";
export type { Money } from "./money.js";
export type { OrderLine } from "./order-line.js";
export { overrunLength } from "./overrun-length.js";
export { returnCornerCover } from "./return-corner-cover.js";
export type { RowLine } from "./rows/row-line.js";
export type { ItemTotal, RowTotals } from "./rows/row-totals.js";
export { shareOfPrice } from "./share-of-price.js";
export { soffitFace } from "./soffit-face.js";
export { spareUnits } from "./spare-units.js";
export { stoneFace } from "./stone-face.js";
export type { ElevationMeasures, TakeOff } from "./take-job.js";
export { takeOff } from "./take-off.js";
export type { RowOptions, TakenRow, TakenRows, WallRow } from "./rows/row-types.js";
export type { TakenWall } from "./rows/worked-row.js";
export { takeOffRows } from "./take-off-rows.js";
export { type ElevationLot, unitsByElevation } from "./units-by-elevation.js";
export { unitsPlaced } from "./units-placed.js";
export { wallCornerCover } from "./wall-corner-cover.js";
