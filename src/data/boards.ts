import type { Basis } from "../core/basis.js";

/** How far one length of joint tape usually laps over the next. */
export const usualTapeOverlap = { kind: "common practice", says: "joint tape laps 2 in over the length before" } as const satisfies Basis;
