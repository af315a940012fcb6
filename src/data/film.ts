import type { Basis } from "../core/basis.js";

/** A coating goes on as it comes, unless its sheet says otherwise. */
export const unthinned = { kind: "common practice", says: "a barrier coating is applied unthinned" } as const satisfies Basis;

/** What the wet film leaves when it has dried. */
export const solidsOfFilm = {
  kind: "published",
  publisher: "US Department of Defense",
  title: "MIL-HDBK-1110 Handbook for Paints and Protective Coatings",
  edition: "1996, reissued as UFC 3-190-06 in 2004",
  locator: "section 2.1.5 and procedure 13",
  says: "dry film is wet film times the share of solids by volume",
} as const satisfies Basis;

/** Thinner leaves nothing behind: the same solids are in more coating. */
export const thinnedSolids = { kind: "derived", says: "the solids of one volume of coating, in that volume and its thinner" } as const satisfies Basis;
