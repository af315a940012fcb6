/**
 * Mortar: water and yield of a bag, beds left by a trowel, what a face takes.
 *
 * @packageDocumentation
 */
export { bagYield } from "./bag-yield.js";
export { bedMortar } from "./bed-mortar.js";
export { mixingWater } from "./mixing-water.js";
export { notchedBed } from "./notched-bed.js";
export { squareNotchBed } from "./square-notch-bed.js";
export { uNotchBed } from "./u-notch-bed.js";
export { vNotchBed } from "./v-notch-bed.js";
