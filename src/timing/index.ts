/**
 * Timing: the clock of a batch.
 *
 * @packageDocumentation
 */
export { mixClock } from "./mix-clock.js";
export { mixTimes } from "./mix-times.js";
