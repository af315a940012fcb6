/**
 * Barriers against water on walls: their area with returns, what to order, and how sheets lap.
 *
 * @packageDocumentation
 */
export { barrierArea } from "./barrier-area.js";
export { type BarrierOrder, barrierOrder, type PackLine } from "./barrier-order.js";
export { detailBand } from "./detail-band.js";
export { netBarrier } from "./net-barrier.js";
export { returnStrip } from "./return-strip.js";
export { sheetLaps } from "./sheet-laps.js";
