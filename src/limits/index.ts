/**
 * Figures held against limits: weights, sizes, clearances, flatness, contact, adhesion, deflection. Each limit is that of a
 * named text; what is only remembered decides nothing.
 *
 * @packageDocumentation
 */
export { adhesionStress } from "./adhesion-stress.js";
export { type AdhesionTest, adhesionTest } from "./adhesion-test.js";
export { allowedDeflection } from "./allowed-deflection.js";
export { type AssemblyWeight, assemblyWeight, type AssemblyWeights, type WeighedLayer } from "./assembly-weight.js";
export { type BaseClearances, baseClearances } from "./base-clearances.js";
export { type ContactCoverage, contactCoverage } from "./contact-coverage.js";
export { contactShare } from "./contact-share.js";
export { deckStock } from "./deck-stock.js";
export { type Flatness, flatness } from "./flatness.js";
export { type FramingDeflection, framingDeflection } from "./framing-deflection.js";
export type { Judged, Verdict } from "./judge.js";
export { layerWeight } from "./layer-weight.js";
export { loadOfWeight } from "./load-of-weight.js";
export { sampleShare } from "./sample-share.js";
export { thicknessAtWeight } from "./thickness-at-weight.js";
export { type VeneerLimits, veneerLimits } from "./veneer-limits.js";
export { weightOnStud } from "./weight-on-stud.js";
export { wetWeight } from "./wet-weight.js";
