import type { Basis } from "../core/basis.js";

/** The joint width that spacers usually give. */
export const usualJoint = { kind: "common practice", says: "joints of 3/8 in (10 mm) from spacers" } as const satisfies Basis;
