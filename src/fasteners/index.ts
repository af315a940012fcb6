/**
 * Screws that hold boards on steel studs: how many, how long, and what they carry under wind.
 *
 * @packageDocumentation
 */
export { boardEdgesOnStuds } from "./board-edges-on-studs.js";
export { boardModules } from "./board-modules.js";
export { boardScrews } from "./board-screws.js";
export { screwOrder } from "./screw-order.js";
