/**
 * The whole wall: from its elevations and layers to the order list, each line with its worked solution.
 *
 * @packageDocumentation
 */
export { backingFace } from "./backing-face.js";
export { cornerPacks } from "./corner-packs.js";
export { courseHeight } from "./course-height.js";
export { edgeBacking } from "./edge-backing.js";
export { faceGrowth } from "./face-growth.js";
export type { Job } from "./job.js";
export type { OrderLine } from "./order-line.js";
export { returnCornerCover } from "./return-corner-cover.js";
export { stoneFace } from "./stone-face.js";
export { takeOff } from "./take-off.js";
export { unitsPlaced } from "./units-placed.js";
export { wallCornerCover } from "./wall-corner-cover.js";
