/**
 * Boards on the wall and what comes in lengths: how many, how they lie, how much joint, how to cut.
 *
 * @packageDocumentation
 */
export { boardCount } from "./board-count.js";
export { boardJointEstimate } from "./board-joint-estimate.js";
export { boardJointTape } from "./board-joint-tape.js";
export { linearOrder } from "./linear-order.js";
