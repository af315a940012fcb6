/**
 * Mortar: water and yield of a bag, beds left by a trowel, what a face takes, site mixes and batches.
 *
 * @packageDocumentation
 */
export { absoluteVolume } from "./absolute-volume.js";
export { bagYield } from "./bag-yield.js";
export { batchSize } from "./batch-size.js";
export { batchVolume } from "./batch-volume.js";
export { bedContact } from "./bed-contact.js";
export { bedMortar } from "./bed-mortar.js";
export { type BedMortarBy, type BedMortarRange, bedMortarRange } from "./bed-mortar-range.js";
export { bulkingByVoids } from "./bulking-by-voids.js";
export { hollowFill } from "./hollow-fill.js";
export { levellingCoat } from "./levelling-coat.js";
export { mayAddWater } from "./may-add-water.js";
export { type MayMoveUnit, mayMoveUnit } from "./may-move-unit.js";
export { mixByParts } from "./mix-by-parts.js";
export { mixYield } from "./mix-yield.js";
export { mixingWater } from "./mixing-water.js";
export { notchedBed } from "./notched-bed.js";
export { partVolume } from "./part-volume.js";
export { sandPart } from "./sand-part.js";
export { siteMix } from "./site-mix.js";
export { spreadAhead } from "./spread-ahead.js";
export { squareNotchBed } from "./square-notch-bed.js";
export { uNotchBed } from "./u-notch-bed.js";
export { vNotchBed } from "./v-notch-bed.js";
export { waterFromRatio } from "./water-from-ratio.js";
export { waterLeft } from "./water-left.js";
