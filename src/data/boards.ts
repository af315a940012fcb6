import type { Basis } from "../core/basis.js";

/** How far one length of joint tape usually laps over the next. */
export const usualTapeOverlap = { kind: "common practice", says: "joint tape laps 2 in over the length before" } as const satisfies Basis;

/** Where the studs of a framed wall stand besides those of the spacing. */
export const usualStuds = { kind: "common practice", says: "a stud at each end of the wall and at both sides of each opening, up its whole height" } as const satisfies Basis;

/** Where the first board usually lies. */
export const usualFirstBoard = { kind: "common practice", says: "the first whole board at the left end and the foot of the wall" } as const satisfies Basis;
