// What a crew asks in the course of a whole job, 97 questions from the bid to the close, and what here answers each; or
// why nothing does. Nothing that is asked is passed over unseen.
import { describe, expect, it } from "vitest";
import { allTopics } from "../support/modules.js";

type Answered = readonly [question: string, ...by: string[]];
interface LeftOut {
  readonly question: string;
  readonly because: string;
}

const rows: readonly (Answered | LeftOut)[] = [
  // Bid
  /* 1 */ ["how much face is clad", "takeOff", "wallMeasures", "openingMeasures"],
  /* 2 */ ["how many feet of corner, and what flat they replace", "cornerUnits", "wallCornerCover", "returnCornerCover"],
  /* 3 */ ["whether such a unit is within what may be adhered", "veneerLimits"],
  /* 4 */ ["what the wall weighs wet, layer by layer", "assemblyWeight", "weightOnStud"],
  /* 5 */ ["whether the studs are stiff enough", "framingDeflection"],
  /* 6 */ ["how many hours the crew needs", "crewDays", "paidHours"],
  /* 7 */ ["what share of paid time is time at the tool", "toolTime", "crewDays"],
  /* 8 */ ["how much slower it goes high up or much cut up", "crewDays", "stretchLabour"],
  /* 9 */ ["how many days the weather takes", "weatherDays"],
  { question: "what winter protection costs", because: "heaters and enclosures are designed by others; coverTonight says what the rules ask" },
  { question: "how many bays of scaffold, and how loaded", because: "scaffolds are designed by others; deckStock says what a deck with a load on its plate may carry" },
  // Order
  /* 12 */ ["how many sheets", "boardCount", "boardLayout"],
  /* 13 */ ["how many screws of which length", "boardScrews", "screwOrder", "screwLength"],
  /* 14 */ ["how much tape", "boardJointTape"],
  /* 15 */ ["how many pails of barrier", "coatingOrder", "barrierOrder"],
  /* 16 */ ["how many bags of setting mortar", "bedMortarRange", "bedMortar"],
  /* 17 */ ["what a wall out of plane adds", "hollowFill"],
  /* 18 */ ["how many bags of joint mortar", "pointingMortar"],
  /* 19 */ ["how much must come from one lot", "lotsByElevation", "unitsByElevation"],
  /* 20 */ ["whether bags last until they are used", "shelfLife"],
  /* 21 */ ["how many tubes of sealant", "sealantOrder", "backerRodSize"],
  // Stage and deliver
  /* 22 */ ["what the truck and the hoist carry", "deliveredWeight", "hoistTrips"],
  /* 23 */ ["how much water is needed", "takeOff", "mixingWater"],
  /* 24 */ ["what a store too warm or too cold does to the life of the mix", "lifeAtTemperature"],
  { question: "how crates are mixed for shade", because: "a habit of drawing from several at once, without a figure" },
  /* 26 */ ["where to stack, and how much", "deckStock"],
  // Acceptance of the substrate
  /* 27 */ ["whether the wall is plane", "flatness"],
  /* 28 */ ["whether studs stand where they are drawn", "studMark"],
  /* 29 */ ["whether the sheathing is fastened, by a sample", "sampleShare"],
  /* 30 */ ["whose defect it is: the reading beside its limit", "flatness"],
  /* 31 */ ["whether flashings and clearances are right", "baseClearances"],
  /* 32 */ ["whether the joints of the frame go through", "movementJointCheck"],
  // Fasteners
  /* 33 */ ["how many screws are in this sheet", "boardScrews", "boardScrewsEdgeField", "boardLayout", "rakingScrews"],
  /* 34 */ ["whether the pattern carries the wind", "claddingPressure", "pullOver", "spacingForPressure"],
  /* 35 */ ["what share of the screws missed", "sampleShare"],
  /* 36 */ ["whether the second layer keeps clear of the joints of the first", "boardLayers"],
  /* 37 */ ["whether the screw reaches through the steel", "screwLength"],
  // Tape and joints of boards
  /* 38 */ ["how many feet of joint", "boardJointEstimate", "boardLayout"],
  /* 39 */ ["filler by the seam", "jointByLength"],
  /* 40 */ ["how long until the tape may be coated", "workWindows", "timeToAge"],
  // Membrane
  /* 41 */ ["how wet to roll it", "wetFilm"],
  /* 42 */ ["how far this pail goes", "packCover", "spreadingRate"],
  /* 43 */ ["whether it may be coated now", "coatingWeather", "surfaceMargin", "dewPoint"],
  /* 44 */ ["when the second coat may go on", "recoatWindow"],
  /* 45 */ ["corners, penetrations and transitions", "detailBand", "barrierArea"],
  /* 46 */ ["how long it may stay bare", "exposureLeft"],
  /* 47 */ ["when stone may be stuck to it", "workWindows"],
  // Readings
  /* 48 */ ["how many film readings", "filmReadingPlan"],
  /* 49 */ ["whether the readings pass", "filmReadingCheck"],
  /* 50 */ ["what film was really put on", "filmFromUsage"],
  /* 51 */ ["what a bond pull says", "adhesionTest", "sampleShare"],
  /* 52 */ ["whether the backs are covered", "contactCoverage"],
  /* 53 */ ["what weather readings are needed", "readingTimes"],
  /* 54 */ ["how many cure tests", "cureTests"],
  // Layout
  /* 55 */ ["where the first line is", "ledgerLine"],
  /* 56 */ ["how many courses and which joint", "coursing"],
  /* 57 */ ["whether the joint takes up the error", "coursing", "errorPerJoint"],
  /* 58 */ ["whether it centres, and the cuts at the ends", "bondPattern"],
  /* 59 */ ["where heads and sills meet joints", "headsAndSills"],
  /* 60 */ ["where the movement joints are", "movementLayout", "movementSpacing"],
  /* 61 */ ["whether the ledger holds the wet stone", "ledgerLine"],
  /* 62 */ ["how high to go today", "liftHeight"],
  /* 63 */ ["how far in the corners go before the field closes", "cornerLead", "leadGap", "bondPattern"],
  // Mixing
  /* 64 */ ["how much water for this bag", "mixingWater", "waterFromRatio"],
  /* 65 */ ["a third of a bag", "mixingWater"],
  /* 66 */ ["how big a batch now", "batchSize"],
  /* 67 */ ["slake, remix and discard by the clock", "mixClock"],
  /* 68 */ ["whether water may be added", "mayAddWater"],
  { question: "what a quart too much cost in strength", because: "the figures at hand are those of concrete; waterLeft says how much there may be" },
  /* 70 */ ["how hot the mixing water must be", "mixTemperature"],
  // Setting
  /* 71 */ ["how far to spread", "spreadAhead"],
  /* 72 */ ["how wind and sun cut that", "spreadAhead", "evaporation"],
  /* 73 */ ["which notch", "notchedBed", "bedContact"],
  /* 74 */ ["how much mortar was used", "bedFromUsage"],
  /* 75 */ ["whether the joint stays as wide", "jointDrift"],
  /* 76 */ ["whether a set stone may be moved", "mayMoveUnit"],
  /* 77 */ ["how many cuts, and how long they take", "cutUnits", "countLabour"],
  // Cure
  /* 78 */ ["whether the ledger may go", "equivalentAge", "timeToAge"],
  /* 79 */ ["when the last stone is set today", "lastUnitToday"],
  /* 80 */ ["what cover tonight, and until when", "coverTonight"],
  /* 81 */ ["damp cure in heat", "masonryWeather"],
  /* 82 */ ["rain on the way: how long the joint must stay covered", "workWindows"],
  // Pointing
  /* 83 */ ["how many feet of joint, how deep", "mortarJointLength", "pointingDepth"],
  /* 84 */ ["how much to fill before striking", "pointingRound"],
  /* 85 */ ["in how many layers", "repointingLayers"],
  /* 86 */ ["the same water in every batch", "waterSpread"],
  /* 87 */ ["whether it takes a thumbprint, and from when to try", "workWindows"],
  { question: "heads before beds", because: "an order of hand, without a figure" },
  // Cleaning
  /* 89 */ ["when to brush, when to wash", "workWindows"],
  /* 90 */ ["how much cleaner", "cleanerOrder"],
  /* 91 */ ["whether a bloom is lime or a leak", "efflorescence"],
  // Close
  /* 92 */ ["what each task took against the plan", "usedAgainstPlan"],
  /* 93 */ ["which batch a stone came from", "batchRecord"],
  /* 94 */ ["what the waste was", "wasteFromUsage"],
  /* 95 */ ["spare stock", "spareUnits"],
  /* 96 */ ["whether weeps are open, by a sample", "sampleShare"],
  /* 97 */ ["days lost and changes", "weatherDays", "compareTakeOffs"],
];

const exported = new Set((await allTopics()).flatMap(({ module }) => Object.keys(module)));
const isAnswered = (row: Answered | LeftOut): row is Answered => Array.isArray(row);

it("there are 97 questions, each once", () => {
  const questions = rows.map((row) => (isAnswered(row) ? row[0] : row.question));
  expect(questions).toHaveLength(97);
  expect(new Set(questions).size).toBe(97);
});

it("nine out of ten are answered, and the rest say why they are not", () => {
  expect(rows.filter(isAnswered).length).toBeGreaterThanOrEqual(90);
  for (const row of rows) if (!isAnswered(row)) expect(row.because.length).toBeGreaterThan(20);
});

describe("what is named is there", () => {
  it.each(rows.flatMap((row, index) => (isAnswered(row) ? [[index + 1, ...row] as const] : [])))("%i %s: %s", (_row, _question, ...by) => {
    expect(by.length).toBeGreaterThan(0);
    expect(by.filter((name) => !exported.has(name))).toEqual([]);
  });
});
