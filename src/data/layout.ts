import type { Basis } from "../core/basis.js";

/** How small a piece may be cut. */
export const usualLeastCut = { kind: "common practice", says: "no piece smaller than half a unit, of which two and a joint make a whole one" } as const satisfies Basis;

/** Over how many joints an error is spread. */
export const usualSpread = { kind: "common practice", says: "an error is spread over ten joints" } as const satisfies Basis;

/** How much one joint may differ from the next before the eye sees it. */
export const usualJointChange = { kind: "common practice", says: "a joint changed by no more than 1/16 in" } as const satisfies Basis;

/** How the units of one course lie over those of the course below. */
export const usualLap = { kind: "common practice", says: "units lap those of the next course by a quarter of their length or more" } as const satisfies Basis;

/** The corner units of one edge. */
export const usualCornerLegs = { kind: "common practice", says: "the long and the short leg of the corner units are turned about from course to course" } as const satisfies Basis;

/** How marks are set off on a story rod. */
export const markRounding = { kind: "common practice", says: "marks are set off from the foot of the rod, each height rounded by itself, never stepped off from the mark before" } as const satisfies Basis;

/** Where the courses below a ledger go. */
export const usualLedger = { kind: "common practice", says: "the ledger carries the lowest whole course; what lies below it is set when the ledger is gone" } as const satisfies Basis;

/** Where the lot may change. */
export const usualLots = { kind: "common practice", says: "one lot to an elevation, changed only at a corner or a movement joint" } as const satisfies Basis;
