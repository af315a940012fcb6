/**
 * Pictures of results as SVG, for print in black and white.
 *
 * @packageDocumentation
 */
export { boardElevation, type ElevationOptions } from "./elevation.js";
