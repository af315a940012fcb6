/**
 * Joints: the mortar that fills them, what tooling takes out, rounds of pointing, spacers, sealant.
 *
 * @packageDocumentation
 */
export { backerRodSize } from "./backer-rod-size.js";
export { concaveLoss } from "./concave-loss.js";
export { coursedFace } from "./coursed-face.js";
export { faceShare } from "./face-share.js";
export { jointByLength } from "./joint-by-length.js";
export { jointDrift } from "./joint-drift.js";
export { mixedFace } from "./mixed-face.js";
export { mortarJointLength } from "./mortar-joint-length.js";
export { pointingDepth } from "./pointing-depth.js";
export { pointingFills } from "./pointing-fills.js";
export { pointingMortar } from "./pointing-mortar.js";
export { pointingOrder } from "./pointing-order.js";
export { pointingRound } from "./pointing-round.js";
export { rakedLoss } from "./raked-loss.js";
export { repointingDepth } from "./repointing-depth.js";
export { repointingLayers } from "./repointing-layers.js";
export { roundLength } from "./round-length.js";
export { sealantOrder } from "./sealant-order.js";
export { spacerCount } from "./spacer-count.js";
export { tooledJoint } from "./tooled-joint.js";
export { toolingLoss } from "./tooling-loss.js";
export { vLoss } from "./v-loss.js";
export { weatheredLoss } from "./weathered-loss.js";
