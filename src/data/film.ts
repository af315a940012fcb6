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

/** A flat board takes up next to nothing. */
export const smoothFace = { kind: "common practice", says: "the face is smooth and takes nothing up" } as const satisfies Basis;

/** A volume spread over an area to a thickness. */
export const spreadVolume = { kind: "derived", says: "a volume is its area times its thickness" } as const satisfies Basis;

/** How a gauge with teeth is read. */
export const toothGauge = {
  kind: "published",
  publisher: "ASTM International",
  title: "D4414 Standard Practice for Measurement of Wet Film Thickness by Notch Gages",
  edition: "1995",
  locator: "reading of the gauge",
  quotedBy: "Organic Finishing Guidebook, 2012, page 310",
  says: "the film is at least the last tooth that is wet and less than the next",
} as const satisfies Basis;

/** How many areas, spots and readings a coating on metal gets. */
export const pa2Frequency = {
  kind: "published",
  publisher: "SSPC (AMPP)",
  title: "SSPC-PA 2",
  edition: "2018 or later",
  locator: "required number of measurements",
  quotedBy: "SSPC-PA 2 Basics, a newsletter article, and PaintSquare News, 25 November 2014",
  says: "every 100 ft2 up to 300 ft2; 3 areas of 100 ft2 up to 1,000 ft2; 1 more for each further 1,000 ft2 or part; 5 spots an area, 3 readings a spot",
} as const satisfies Basis;

/** How many spots and readings a coating on concrete, wood or wallboard gets. */
export const pa9Frequency = {
  kind: "published",
  publisher: "SSPC (AMPP)",
  title: "SSPC-PA 9 Measurement of Dry Coating Thickness on Cementitious Substrates Using Ultrasonic Gages",
  edition: "2008, 2015",
  locator: "frequency",
  quotedBy: "study cards",
  says: "5 spots in each 100 ft2, 3 readings a spot",
} as const satisfies Basis;

/** How many readings a flat coated area of a ship's tank gets. */
export const pspcFrequency = {
  kind: "published",
  publisher: "IMO",
  title: "PSPC annex 3, dry film thickness measurements",
  edition: "MSC.215(82)",
  locator: "annex 3, item 1",
  says: "1 reading for each 5 m2 of flat area",
} as const satisfies Basis;

/** Readings by one area for each so many square feet or metres, as a published rule counts them. */
export const readingsBySize = {
  "SSPC-PA 9": { areaSize: "100 ft2", spotsPerArea: 5, readingsPerSpot: 3, spot: "readings 2 in or more apart within a circle of 6 in", basis: pa9Frequency },
  "IMO PSPC": { areaSize: "5 m2", spotsPerArea: 1, readingsPerSpot: 1, spot: "one reading", basis: pspcFrequency },
} as const;

/** How many spots an area has, where spot means are judged. */
export const spotsInArea = 5;

/** How many readings a spot has at least, where spot means are judged. */
export const readingsAtSpot = 3;

/** No allowance: every spot lies within what is specified. */
export const pa2Level1 = {
  kind: "published",
  publisher: "SSPC (AMPP)",
  title: "SSPC-PA 2",
  edition: "2018 or later",
  locator: "level 1",
  quotedBy: "SSPC-PA 2 Basics, a newsletter article",
  says: "no allowance on spots; the area mean within what is specified",
} as const satisfies Basis;

/** Spots from 80 to 120 % of what is specified, on metal. */
export const pa2Level3 = {
  kind: "published",
  publisher: "SSPC (AMPP)",
  title: "SSPC-PA 2",
  edition: "2018 or later",
  locator: "level 3",
  quotedBy: "SSPC-PA 2 Basics, a newsletter article",
  says: "spots from 80 % of the least to 120 % of the most; the area mean within what is specified",
} as const satisfies Basis;

/** Spots from 75 to 125 % of what is specified, on other faces than metal. */
export const pa9Levels = {
  kind: "published",
  publisher: "SSPC (AMPP)",
  title: "SSPC-PA 9 Measurement of Dry Coating Thickness on Cementitious Substrates Using Ultrasonic Gages",
  edition: "2008, 2015",
  locator: "levels 1, 3 and 4",
  quotedBy: "study cards",
  says: "level 1: no allowance; level 3: spots from 75 % of the least to 125 % of the most; level 4: from 75 % of the least, without a most",
} as const satisfies Basis;

/** Spots that fail: how far the bad place reaches. */
export const pa2Extent = {
  kind: "published",
  publisher: "SSPC (AMPP)",
  title: "SSPC-PA 2",
  edition: "edition not known",
  locator: "section 8",
  says: "spots every 5 ft (1.5 m) in each direction until two in a row conform; no allowance on these",
} as const satisfies Basis;

/** Readings against a nominal dry film. */
export const iso19840 = {
  kind: "published",
  publisher: "ISO",
  title: "ISO 19840",
  edition: "edition not known",
  locator: "acceptance",
  quotedBy: "Corrosionpedia, after Francis",
  says: "the mean at least the nominal film, every reading at least 80 % of it, fewer than 20 % of the readings below it",
} as const satisfies Basis;

/** Readings against a nominal dry film in a ship's tank. */
export const pspcAcceptance = {
  kind: "published",
  publisher: "IMO",
  title: "PSPC",
  edition: "MSC.215(82)",
  locator: "dry film thickness",
  quotedBy: "Corrosionpedia, after Francis",
  says: "90 % of the readings or more at least the nominal film, none below 90 % of it",
} as const satisfies Basis;

/** Rules that judge the means of spots, and the mean of their area without allowance. */
export const spotMeanRules = {
  "SSPC-PA 2 level 1": { low: "100 %", high: "100 %", basis: pa2Level1 },
  "SSPC-PA 2 level 3": { low: "80 %", high: "120 %", basis: pa2Level3 },
  "SSPC-PA 9 level 1": { low: "100 %", high: "100 %", basis: pa9Levels },
  "SSPC-PA 9 level 3": { low: "75 %", high: "125 %", basis: pa9Levels },
  "SSPC-PA 9 level 4": { low: "75 %", high: undefined, basis: pa9Levels },
} as const;

/** Rules that judge every reading against a nominal film: `low` is the least of one reading, `shortOnes` the share that may lie below nominal. */
export const everyReadingRules = {
  "ISO 19840": { low: "80 %", shortOnes: "20 %", shortOnesMayEqual: false, meanCounts: true, basis: iso19840 },
  "IMO PSPC": { low: "90 %", shortOnes: "10 %", shortOnesMayEqual: true, meanCounts: false, basis: pspcAcceptance },
} as const;

/** How often a coating is tested for cure. */
export const cureTestCount = {
  kind: "published",
  publisher: "US Department of Defense",
  title: "UFGS-09971, exterior coating of steel structures",
  edition: "online copy",
  locator: "page 28, cure test",
  says: "3 tests in the first 1,000 ft2 (100 m2), 1 more in each additional 1,000 ft2 or part; counted here by the square feet",
} as const satisfies Basis;
