/**
 * Layout: how many units a face takes, how its courses and bond come out, where the ledger is, which lots go where.
 *
 * @packageDocumentation
 */
export { baseMove } from "./base-move.js";
export type { BondCourse, BondPiece } from "./bond-course.js";
export { type BondPattern, bondPattern } from "./bond-pattern.js";
export { bondShift } from "./bond-shift.js";
export type { ClosingJoint } from "./close-run.js";
export { cornerLead } from "./corner-lead.js";
export { cornerUnits } from "./corner-units.js";
export { type Coursing, coursing } from "./coursing.js";
export { cutInRun } from "./cut-in-run.js";
export { cutUnits } from "./cut-units.js";
export { errorPerJoint } from "./error-per-joint.js";
export { halfUnit } from "./half-unit.js";
export { type HeadsAndSills, headsAndSills, type OpeningLevel } from "./heads-and-sills.js";
export { jointBedToBed } from "./joint-bed-to-bed.js";
export { jointForCut } from "./joint-for-cut.js";
export { jointInOpening } from "./joint-in-opening.js";
export { jointUnitToUnit } from "./joint-unit-to-unit.js";
export { leadGap } from "./lead-gap.js";
export { ledgerHeight } from "./ledger-height.js";
export { type LedgerLine, ledgerLine } from "./ledger-line.js";
export { ledgerScrews } from "./ledger-screws.js";
export { type ElevationLots, type LotsByElevation, lotsByElevation } from "./lots-by-elevation.js";
export { lotsForArea } from "./lots-for-area.js";
export { runOfUnits } from "./run-of-units.js";
export { stoneBelow } from "./stone-below.js";
export type { RodCourse, RodMark } from "./story-rod.js";
export { storyRodText } from "./story-rod-text.js";
export { tapeMark } from "./tape-mark.js";
export type { StoneUnder, UnderLedger } from "./under-ledger.js";
export { unitsForFace } from "./units-for-face.js";
