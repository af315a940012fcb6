import type { Basis } from "../core/basis.js";

/** Plane and solid geometry. */
export const geometry = { kind: "derived", says: "geometry" } as const satisfies Basis;

/** Adding, sharing out and rounding up. */
export const arithmetic = { kind: "derived", says: "arithmetic" } as const satisfies Basis;

/** Forces and loads in balance. */
export const statics = { kind: "derived", says: "statics" } as const satisfies Basis;
