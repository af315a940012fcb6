import type { Basis } from "../core/basis.js";

/** How warmth shortens the life of a batch: by half for each 10 degC. */
export const doublingRule = {
  kind: "published",
  publisher: "US Department of Defense",
  title: "UFGS-09971, exterior coating of steel structures",
  edition: "online copy",
  locator: "3.7.1.3, pot life, page 26",
  says: "life halves for each 18 degF (10 degC) warmer and doubles for each 18 degF colder",
} as const satisfies Basis;

/** Age by the law of Arrhenius. */
export const arrheniusAge = {
  kind: "published",
  publisher: "CEB-FIP",
  title: "Model Code 1990, equivalent age",
  edition: "1990",
  locator: "equivalent age",
  quotedBy: "the material manual of a finite-element program, release 9.3, section 20.1.1",
  says: "there with 4000 K and 293 K; ASTM C1074 has the same function with other constants",
} as const satisfies Basis;

/** Where absolute temperature begins. */
export const kelvinScale = { kind: "definition", says: "0 degC is 273.15 K" } as const satisfies Basis;

/** Temperature times time. */
export const saulMaturity = {
  kind: "published",
  publisher: "German cement industry",
  title: "Zement-Taschenbuch",
  edition: "51st, 2008",
  locator: "maturity after Saul",
  quotedBy: "a German reference work on concrete",
  says: "there with a datum of -10 degC",
} as const satisfies Basis;

/** Time below the datum counts for nothing. */
export const coldCountsNothing = {
  kind: "published",
  publisher: "China",
  title: "GB 50204, acceptance of concrete structures",
  edition: "edition not named",
  locator: "appendix D, D.0.3",
  quotedBy: "a web page",
  says: "days at or below 0 degC count for nothing",
} as const satisfies Basis;

/** Strength along a hyperbola. */
export const hyperbolicGrowth = { kind: "from memory", says: "hyperbola of strength over age, after ASTM C1074 and Carino" } as const satisfies Basis;

/** Strength of concrete by age, at 20 degC. */
export const eurocodeGrowth = {
  kind: "published",
  publisher: "CEN",
  title: "EN 1992-1-1",
  edition: "edition not named",
  locator: "3.1.2, equations 3.2 and 3.4",
  quotedBy: "a reference site on the Eurocodes",
} as const satisfies Basis;

/** The coefficient s of EN 1992-1-1 by class of cement. */
export const eurocodeCoefficient = { R: "0.20", N: "0.25", S: "0.38" } as const;

/** When strength is enough for one frost. */
export const frostStrength = {
  kind: "published",
  publisher: "PCA",
  title: "Design and Control of Concrete Mixtures",
  edition: "about 2002",
  locator: "chapter 14, effect of freezing",
  says: "at 500 psi (3.5 MPa), as a rule within 24 h at usual temperatures, one freezing does no lasting harm",
} as const satisfies Basis;

/** Which row of a recoat table holds. */
export const hottestHour = {
  kind: "published",
  publisher: "US Department of Defense",
  title: "UFGS-09971, exterior coating of steel structures",
  edition: "online copy",
  locator: "page 28, recoat windows",
  says: "the row of the highest surface temperature that lasted an hour or more since the last coat",
} as const satisfies Basis;

/** When to warn that a bare barrier must be covered. */
export const exposureWarning = { kind: "common practice", says: "warn when 80 % of the exposure limit is used" } as const satisfies Basis;

/** Water turns to ice. */
export const freezingPoint = { kind: "definition", says: "water freezes at 32 degF (0 degC)" } as const satisfies Basis;

/**
 * What is to be looked for before the clock is believed, by the work that waits; and usual holds at 70 degF, of the trade,
 * where there are any. The data sheet comes before them.
 */
export const usualHolds = {
  tape: { test: "the filler over the tape is hard and dry right through" },
  coat: { test: "the film is dry to touch and nothing comes off on a finger that presses and turns" },
  ledger: { test: "no unit of the bottom courses moves under the hand", least: "16 h", typical: "24 h", most: "48 h" },
  pointing: { test: "no unit moves under the thumb", least: "24 h", typical: "24 h", most: "72 h" },
  tooling: { test: "the joint takes a thumbprint and leaves no paste on the thumb", least: "20 min", most: "90 min" },
  uncovering: { test: "a wet finger takes no paste off the joint" },
  brushing: { test: "crumbs fall dry from the brush" },
  washing: { test: "a trial patch of 10 to 20 ft2, looked at after a week", least: "48 h", typical: "7 d" },
} as const;

/** What the usual holds stand on. */
export const holdPractice = { kind: "common practice", says: "holds at 70 degF; the data sheet and the test at the wall come first" } as const satisfies Basis;

/** A pound of mass weighs a pound of force. */
export const standardWeight = { kind: "definition", says: "a pound-force is the weight of a pound at standard gravity" } as const satisfies Basis;

/** Bloom is watched before it is washed. */
export const bloomPractice = {
  kind: "common practice",
  says: "a bloom even over new work is left until the wall has been dry for about a month and brushed off dry; one below a single place, or one that comes back, is a leak until shown otherwise",
} as const satisfies Basis;

/** How often the weather is read. */
export const readingFrequency = {
  kind: "published",
  publisher: "US Department of Defense",
  title: "MIL-HDBK-1110 Handbook for Paints and Protective Coatings",
  edition: "1996, reissued as UFC 3-190-06 in 2004",
  locator: "7.4.1 and 9.6.6, pages 127 and 170",
  says: "about every 4 h; UFGS-09971 asks for every hour, and every half hour on a surface above 100 degF",
} as const satisfies Basis;
