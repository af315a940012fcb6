/**
 * Movement joints: how far masonry moves by heat and moisture, how wide and how far apart joints are, and where they go.
 *
 * @packageDocumentation
 */
export { jointByMultiple } from "./joint-by-multiple.js";
export { jointForMovement } from "./joint-for-movement.js";
export { type MasonrySpacing, masonrySpacing } from "./masonry-spacing.js";
export { moistureMovement } from "./moisture-movement.js";
export { type MovementGap, type MovementJointCheck, movementJointCheck } from "./movement-joint-check.js";
export { type MovementJoint, type MovementLayout, movementLayout, type MovementPanel } from "./movement-layout.js";
export { type MovementSpacing, movementSpacing } from "./movement-spacing.js";
export { panelSpacing } from "./panel-spacing.js";
export type { JointReason } from "./place-lines.js";
export { spacingForWidth } from "./spacing-for-width.js";
export { type MaterialMovement, thermalMovementByMaterial } from "./thermal-movement-by-material.js";
export { thermalMovement } from "./thermal-movement.js";
export { unrestrainedStrain } from "./unrestrained-strain.js";
export { widthForRange } from "./width-for-range.js";
