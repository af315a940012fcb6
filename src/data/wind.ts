import type { Basis } from "../core/basis.js";

/** What every wind pressure is worth. */
export const windCaution =
  "An estimate, for walls to 60 ft: parapets, hills, special wind regions and a code's own amendments are not checked. Local code and a licensed design professional decide.";

/** Velocity pressure and exposure of the years 2005 to 2016. */
export const asce7 = {
  kind: "published",
  publisher: "ASCE",
  title: "ASCE 7, Minimum Design Loads",
  edition: "7-05 to 7-16",
  locator: "velocity pressure; Table 26.10-1 (7-16)",
  quotedBy: "a research code and an open-source verification test that code it",
} as const satisfies Basis;

/** The ground elevation factor, from 2016 on. */
export const asce716Elevation = {
  kind: "published",
  publisher: "ASCE",
  title: "ASCE 7, Minimum Design Loads",
  edition: "7-16",
  locator: "ground elevation factor",
  quotedBy: "an open-source verification test that codes it",
} as const satisfies Basis;

/** The importance factor of 7-05; from 7-10 on it is in the wind map. */
export const importanceFactor = { kind: "from memory", says: "ASCE 7-05, equation 6-15: the importance factor multiplies the velocity pressure" } as const satisfies Basis;

/** The least height at which exposure B is taken for cladding. */
export const exposureBLeast = {
  kind: "published",
  publisher: "ASCE",
  title: "ASCE 7, Minimum Design Loads",
  edition: "7-05 to 7-16",
  locator: "exposure B, components and cladding",
  quotedBy: "a research code",
  says: "not lower than 30 ft",
} as const satisfies Basis;

/** The coefficients on walls, for zones 4 and 5. */
export const wallCoefficients = {
  kind: "published",
  publisher: "ASCE",
  title: "ASCE 7, Minimum Design Loads",
  edition: "7-05 to 7-16",
  locator: "Fig. 6-11A, 30.4-1 and 30.3-1, walls",
  quotedBy: "a research code",
} as const satisfies Basis;

/** How the coefficients run between their ends. */
export const straightOverLogArea = { kind: "from memory", says: "ASCE 7 wall figure: straight lines over the logarithm of the area, level beyond" } as const satisfies Basis;

/** External pressure coefficients on walls at the two ends of the chart, by zone and sign. */
export const wallCoefficientTable = {
  4: { positive: { small: "1.0", large: "0.7" }, negative: { small: "-1.1", large: "-0.8" } },
  5: { positive: { small: "1.0", large: "0.7" }, negative: { small: "-1.4", large: "-0.8" } },
} as const;

/** The note on low roofs. */
export const lowRoofNote = {
  kind: "published",
  publisher: "ASCE",
  title: "ASCE 7, Minimum Design Loads",
  edition: "7-05 to 7-16",
  locator: "note to the wall figure",
  quotedBy: "a research code",
  says: "coefficients on walls 10 % less where the roof slopes 10 degrees or less",
} as const satisfies Basis;

const internalCoefficients = {
  kind: "published",
  publisher: "ASCE",
  title: "ASCE 7, Minimum Design Loads",
  edition: "7-05 to 7-16",
  locator: "Table 26.13-1 (7-16)",
  quotedBy: "a research code that holds it",
} as const satisfies Basis;

/** Internal pressure coefficient by the enclosure of the building; it acts either way. */
export const internalPressureTable = {
  basis: internalCoefficients,
  rows: { enclosed: "0.18", "partially enclosed": "0.55" },
} as const;

/** The width of the corner zone. */
export const cornerZoneRule = { kind: "from memory", says: "ASCE 7: a tenth of the least width or 0.4 of the height, the lesser; not less than 0.04 of the least width nor 3 ft" } as const satisfies Basis;

/** From strength level to allowable level. */
export const allowableWindShare = { kind: "from memory", says: "ASCE 7-10 and 7-16, load combinations: 0.6 of the wind at strength level" } as const satisfies Basis;

/** How the wind pressure and its least value enter. */
export const pressureRule = {
  kind: "published",
  publisher: "ASCE",
  title: "ASCE 7, Minimum Design Loads",
  edition: "7-05 to 7-16",
  locator: "components and cladding, low buildings",
  quotedBy: "a research code",
  says: "velocity pressure times the external less the internal coefficient",
} as const satisfies Basis;

const least16 = { kind: "from memory", says: "ASCE 7-10 and 7-16: at least 16 psf on cladding, at strength level" } as const satisfies Basis;
const least10 = { kind: "from memory", says: "ASCE 7-05 and older: at least 10 psf on cladding, at allowable level" } as const satisfies Basis;

/** Editions on file: the level of the speeds of their maps, and the least pressure at that level. */
export const windEditionTable = {
  "ASCE 7-05": { level: "allowable", leastPressure: "10 psf", basis: least10 },
  "ASCE 7-10": { level: "strength", leastPressure: "16 psf", basis: least16 },
  "ASCE 7-16": { level: "strength", leastPressure: "16 psf", basis: least16 },
} as const;
