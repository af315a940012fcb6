/**
 * Outlines of walls and openings as nested input, and their measures: area, perimeter, edges, sill, jambs and head.
 *
 * @packageDocumentation
 */
export { archedOpening } from "./arched-opening.js";
export { circle } from "./circle.js";
export { circularSegment } from "./circular-segment.js";
export { gable } from "./gable.js";
export type { OpeningMeasures, WallEdge, WallMeasures } from "./measures.js";
export { openingMeasures } from "./opening-measures.js";
export { type OpeningShape, openingShape, type ReadOpeningShape } from "./opening-shape.js";
export type { Point } from "./outline-fault.js";
export { polygonEdge } from "./polygon-edge.js";
export { rectangle } from "./rectangle.js";
export { trapezoid } from "./trapezoid.js";
export { wallMeasures } from "./wall-measures.js";
export { type ReadWallShape, type WallShape, wallShape } from "./wall-shape.js";
