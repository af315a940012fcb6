import type { Basis } from "../core/basis.js";

/** What mixing water weighs. */
export const waterWeight = { kind: "common practice", says: "mixing water taken as 1 kg/L (8.3454 lb/gal)" } as const satisfies Basis;

/** Mass is kept: what goes into the pail comes out of it. */
export const massKept = { kind: "derived", says: "dry mass and water together weigh what the mortar weighs" } as const satisfies Basis;

/** The thinnest bond coat of tile work. */
export const thinBed = {
  kind: "published",
  publisher: "ANSI",
  title: "A108.5, general coverage",
  edition: "edition not named",
  locator: "contact area",
  quotedBy: "the tile trade press",
  says: "bond coat of at least 3/32 in once the tile is embedded",
} as const satisfies Basis;

/** Yield and density of a mix from its parts. */
export const absoluteVolumes = {
  kind: "published",
  publisher: "US Navy",
  title: "NAVEDTRA 14071, Engineering Aid Advanced",
  edition: "training manual",
  locator: "page 17-7, absolute volume method of ACI 211.1",
} as const satisfies Basis;

/** Lime and sand to one part of cement, by mortar type; the sand is the most there may be. */
export const armyProportions = {
  kind: "published",
  publisher: "US Army Engineer School",
  title: "Correspondence course EN5157, Masonry",
  edition: "edition not named",
  locator: "Part C, paragraphs 1-11 to 1-13, Table 1-1",
  says: "sand never more than 3 times cement and lime together",
} as const satisfies Basis;

/** Lime in a Type S mortar; not in the table that was seen. */
export const typeSFromMemory = { kind: "from memory", says: "ASTM C270, Type S: up to half a part of lime to one of cement" } as const satisfies Basis;

/** Sand by the properties of ASTM C270. */
export const sandByProperty = {
  kind: "published",
  publisher: "ASTM",
  title: "C270",
  edition: "edition of 1993 or before",
  locator: "property specification",
  quotedBy: "Masonry Magazine, August 1993, page 18",
  says: "2-1/4 to 3-1/2 parts of sand to cement and lime together",
} as const satisfies Basis;

/** Lime to one part of cement by mortar type, with what each stands on. */
export const limeByType = {
  M: { lime: "1/4", basis: armyProportions },
  S: { lime: "1/2", basis: typeSFromMemory },
  N: { lime: "1-1/4", basis: armyProportions },
  O: { lime: "2", basis: armyProportions },
} as const satisfies Record<string, { lime: string; basis: Basis }>;

/** Mortar from cement paste and sand with voids. */
export const pasteAndVoids = {
  kind: "published",
  publisher: "Gillette & Hill",
  title: "Concrete Construction: Methods and Costs",
  edition: "1908",
  locator: "Theory of the quantity of cement in mortar, before Table XII",
} as const satisfies Basis;

/** How long a mortar after ASTM C270 may be used and have its water made up. */
export const c270Life = {
  kind: "published",
  publisher: "ASTM",
  title: "C270",
  edition: "edition not named",
  locator: "retempering",
  quotedBy: "the Portland Cement Association",
  says: "within 2-1/2 h of the first mixing",
} as const satisfies Basis;

/** How long mortar may lie before it is in its place. */
export const ufgsLife = {
  kind: "published",
  publisher: "US Department of Defense",
  title: "UFGS-04215",
  edition: "edition not named",
  locator: "page 10, mortar",
  says: "in its final position within 2-1/4 h of mixing",
} as const satisfies Basis;

/** The cautious end of the window for retempering. */
export const beallLife = {
  kind: "published",
  publisher: "McGraw-Hill",
  title: "C. Beall, Masonry and Concrete",
  edition: "2004",
  locator: "page 151",
  says: "retempered within 1-1/2 to 2-1/2 h of the first mixing; the low end is taken",
} as const satisfies Basis;

/** Repointing mortar is not retempered. */
export const repointingLife = {
  kind: "published",
  publisher: "US National Park Service",
  title: "Preservation Brief 2",
  edition: "edition not named",
  locator: "mortar preparation",
  quotedBy: "a teaching edition",
  says: "used within about 30 min of the last mixing, and not retempered",
} as const satisfies Basis;

/** Thin-set mortar takes no water once it is mixed. */
export const thinSetPractice = { kind: "common practice", says: "thin-set mortar is stirred again without water; its life starts at the first water" } as const satisfies Basis;

/** Coloured mortar takes no water once it is mixed. */
export const colourPractice = { kind: "common practice", says: "water added to coloured mortar changes its colour" } as const satisfies Basis;

/** A unit is moved while its bed is fresh, or set anew. */
export const adjustPractice = { kind: "common practice", says: "a unit is moved within its adjust time or set anew on fresh mortar, wall and back stripped" } as const satisfies Basis;

/** How far the bed of a job is from the one it was reckoned with. */
export const bedRangePractice = { kind: "common practice", says: "mortar is ordered by the typical bed; the high figure says what to have in reach, hollows of the wall among it" } as const satisfies Basis;
