/**
 * Boards on the wall and what comes in lengths: how many, how they lie, how much joint, how to cut.
 *
 * @packageDocumentation
 */
export { boardCount } from "./board-count.js";
export { boardJointEstimate } from "./board-joint-estimate.js";
export { boardJointTape } from "./board-joint-tape.js";
export { type BoardLayers, boardLayers } from "./board-layers.js";
export { type BoardLayout, boardLayout } from "./board-layout.js";
export type { CloseJoint } from "./close-joints.js";
export { type CutStock, cutStock, type StockCut, type StockNeeded } from "./cut-stock.js";
export { linearOrder } from "./linear-order.js";
export type { ScrewLine } from "./layout-screws.js";
export type { BoardJoint, BoardOffcut, LayoutStud, PlacedBoard, WallBox, WallPoint } from "./placed-board.js";
export { studMark } from "./stud-mark.js";
export type { StudAt } from "./studs.js";
