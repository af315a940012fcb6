/**
 * Joints: the mortar that fills them, what tooling takes off, spacers, sealant.
 *
 * @packageDocumentation
 */
export { coursedFace } from "./coursed-face.js";
