import type { Basis } from "../core/basis.js";

/** Person-days from hours for so much work. */
export const manDays = {
  kind: "published",
  publisher: "US Navy",
  title: "NAVEDTRA 14045, Builder Advanced, chapter 2",
  edition: "about 1996",
  locator: "construction activities; durations",
  quotedBy: "a copy of the manual, which itself quotes NAVFAC P-405",
  says: "a man-day is 8 h; a longer or shorter day counts by its hours less lunch, travel and breaks",
} as const satisfies Basis;

/** How much of a crew is there to work, as a rule; offered and never assumed. */
export const usualAvailability = { least: "75 %", most: "85 %" } as const;

/** What the usual availability stands on. */
export const availabilityRange = {
  kind: "published",
  publisher: "US Navy",
  title: "NAVEDTRA 14233, Seabee 1 and C",
  edition: "no date",
  locator: "availability factors",
  says: "0.75 for a main body, 0.85 for a detail",
} as const satisfies Basis;

/**
 * Hours of one person for so much of a work, as they are heard in the trade; recalled and not seen in print, so they are for a
 * first look beside rates of your own, and nothing is computed from them. The second film of a barrier is a coat of its own.
 */
export const usualRates = {
  "cement board on studs": { of: "area", per: "1000 ft2", least: "20 h", most: "30 h" },
  "tape on board joints": { of: "length", per: "1000 ft", least: "8 h", most: "15 h" },
  "barrier by roller, a coat": { of: "area", per: "1000 ft2", least: "5 h", most: "8 h" },
  "setting thin stone": { of: "area", per: "100 ft2", least: "16 h", most: "30 h" },
  "setting corners": { of: "length", per: "1 ft", least: "0.25 h", most: "0.4 h" },
  "pointing by bag": { of: "area", per: "100 ft2", least: "4 h", most: "8 h" },
  "brushing and cleaning": { of: "area", per: "100 ft2", least: "1 h", most: "2 h" },
} as const;

/** What the usual rates stand on. */
export const ratesFromMemory = { kind: "from memory", says: "rates as they are heard in the trade, not seen in print; your own records come first" } as const satisfies Basis;

/** How equal the water of all batches of one colour is kept. */
export const equalWater = { kind: "common practice", says: "batches of one colour have the same water to dry mix, within 2 %" } as const satisfies Basis;

/** What is used is what is on the wall and what is lost. */
export const volumeKept = { kind: "derived", says: "what came out of the bags and pails is on the wall or lost" } as const satisfies Basis;

/** The stages of such a wall from start to closeout, and what each waits for; common practice, to write a plan from. */
export const usualStages = [
  { stage: "boards and screws", inWeather: "goes on" },
  { stage: "tape on the joints", inWeather: "goes on" },
  { stage: "first coat", inWeather: "stops", waits: "tape" },
  { stage: "second coat", inWeather: "stops", waits: "coat" },
  { stage: "readings, layout and ledger", inWeather: "goes on", waits: "coat" },
  { stage: "setting", inWeather: "stops" },
  { stage: "taking the ledger away", inWeather: "goes on", waits: "ledger", after: "setting" },
  { stage: "pointing and tooling", inWeather: "stops", waits: "pointing", after: "setting" },
  { stage: "brushing", inWeather: "goes on", waits: "brushing" },
  { stage: "washing", inWeather: "stops", waits: "washing", after: "pointing and tooling" },
  { stage: "closeout: sealant, weeps, papers", inWeather: "goes on" },
] as const;

/** What the usual stages stand on. */
export const stagesOfTheTrade = { kind: "common practice", says: "order of work of an adhered veneer on framed walls; the specification comes first" } as const satisfies Basis;
