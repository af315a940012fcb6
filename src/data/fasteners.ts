import type { Basis } from "../core/basis.js";

/** The distance that board screws usually keep from the edges and ends of a board. */
export const usualEdgeDistance = { kind: "common practice", says: "screws 3/8 in from the edges and ends of a board" } as const satisfies Basis;

/** The spacing that board screws usually do not exceed. */
export const usualScrewSpacing = { kind: "common practice", says: "board screws no more than 8 in apart" } as const satisfies Basis;

/** How far a screw must bite. */
export const threeThreads = {
  kind: "published",
  publisher: "ICC",
  title: "International Residential Code",
  edition: "2018",
  locator: "Table R703.3(2) note a",
  says: "screws into cold-formed steel of at least 33 mil, three threads through",
} as const satisfies Basis;

/** What every strength of a screw is worth. */
export const screwStrengthCaution =
  "An estimate: pull-through, eccentric load, edge distance, corrosion and the stud are not checked. Local code and a licensed design professional decide.";

const screwSizes = {
  kind: "published",
  publisher: "AISI",
  title: "screw properties table",
  edition: "not dated",
  locator: "notation",
  quotedBy: "a design sheet in a public permit file",
} as const satisfies Basis;

/** Nominal diameter of a screw by its size. */
export const screwSizeTable = {
  basis: screwSizes,
  rows: { "#6": "0.138 in", "#7": "0.151 in", "#8": "0.164 in", "#10": "0.19 in", "#12": "0.216 in", "1/4 in": "0.25 in" },
} as const;

const thicknessTable = {
  kind: "published",
  publisher: "AISI",
  title: "S201 and S240, thickness designations",
  edition: "not dated",
  locator: "thickness table",
  quotedBy: "general references and the examples of AISI D110-16",
} as const satisfies Basis;

const screwTable = {
  kind: "published",
  publisher: "SSMA",
  title: "product technical guide, allowable screw connection capacity",
  edition: "2010s",
  locator: "screw capacity table, rows 18 and 27 mil",
} as const satisfies Basis;

const thicknessRecalled = { kind: "from memory", says: "design thickness of 30, 68 and 118 mil steel" } as const satisfies Basis;

/** The least that may be delivered of the design thickness of steel. */
export const leastDeliveredShare = {
  kind: "published",
  publisher: "AISI",
  title: "S201 and S240, thickness designations",
  edition: "not dated",
  locator: "thickness table",
  quotedBy: "general references",
  says: "the thickness delivered is at least 95 % of the design thickness",
} as const satisfies Basis;

/** Steel by its mils. A gauge number is no designation: 20 gauge may be 30 mil or 33 mil, and less. */
export const steelDesignations = ["18 mil", "27 mil", "30 mil", "33 mil", "43 mil", "54 mil", "68 mil", "97 mil", "118 mil"] as const;

/** Design thickness of steel by its mils. */
export const steelTable = {
  "18 mil": { design: "0.0188 in", basis: screwTable },
  "27 mil": { design: "0.0283 in", basis: screwTable },
  "30 mil": { design: "0.0312 in", basis: thicknessRecalled },
  "33 mil": { design: "0.0346 in", basis: thicknessTable },
  "43 mil": { design: "0.0451 in", basis: thicknessTable },
  "54 mil": { design: "0.0566 in", basis: thicknessTable },
  "68 mil": { design: "0.0713 in", basis: thicknessRecalled },
  "97 mil": { design: "0.1017 in", basis: thicknessTable },
  "118 mil": { design: "0.1242 in", basis: thicknessRecalled },
} as const;

/** Screws in steel by the specification of the years 2007 to 2016. */
export const s100To2016 = {
  kind: "published",
  publisher: "AISI",
  title: "S100, Cold-Formed Steel Structural Members",
  edition: "S100-07 to S100-16",
  locator: "E4.3 and E4.4, later J4.3 and J4.4",
  quotedBy: "a steel-stud association and a public permit file",
} as const satisfies Basis;

/** Screws in steel by the specification with its supplement of 2022. */
export const s100Supplement3 = {
  kind: "published",
  publisher: "AISI",
  title: "S100, Cold-Formed Steel Structural Members",
  edition: "S100-16 w/S3-22",
  locator: "J4.3 and J4.4",
  quotedBy: "an open-source coding of the specification, tested on AISI D110-16",
} as const satisfies Basis;

/** The research of which an abstract says that the pull-over rule need not change. */
export const pullOverResearch = {
  kind: "published",
  publisher: "AISI",
  title: "RP19-1, research report on screw connections",
  edition: "2019",
  locator: "abstract",
  says: "the pull-over equation of S100-16 need not change; the pull-out equation must",
} as const satisfies Basis;

/** Safety factor (for allowable strength) and resistance factor (for strength-level loads, United States) by edition. */
export const screwFactors = {
  "AISI S100-07 to S100-16": {
    basis: s100To2016,
    pullOut: { safety: "3.00", resistance: "0.50" },
    pullOver: { safety: "3.00", resistance: "0.50" },
    tiltingAndBearing: { safety: "3.00", resistance: "0.50" },
    screwShear: { safety: "3.00", resistance: "0.50" },
  },
  "AISI S100-16 w/S3-22": {
    basis: s100Supplement3,
    pullOut: { safety: "2.80", resistance: "0.55" },
    pullOver: { safety: "2.90", resistance: "0.55" },
    tiltingAndBearing: { safety: "2.80", resistance: "0.55" },
    screwShear: { safety: "3.00", resistance: "0.50" },
  },
} as const;
