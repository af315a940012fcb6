import type { Basis } from "../core/basis.js";

/** What mixing water weighs. */
export const waterWeight = { kind: "common practice", says: "mixing water taken as 1 kg/L (8.3454 lb/gal)" } as const satisfies Basis;

/** Mass is kept: what goes into the pail comes out of it. */
export const massKept = { kind: "derived", says: "mass over density; dry mass and water together weigh what the mortar weighs" } as const satisfies Basis;
