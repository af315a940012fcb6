// Where a question leads to work that can hurt someone, its answer says so: dust with silica, wet mortar, hot water, fuel
// burnt under a cover, loads overhead (common practice; of silica, 29 CFR 1926.1153 is the rule in the United States).
import { describe, expect, it } from "vitest";
import { boardLayout, cutStock } from "../../src/boards/index.js";
import { cleanerOrder } from "../../src/film/index.js";
import { repointingDepth } from "../../src/joints/index.js";
import { coursing, cutUnits, ledgerLine } from "../../src/layout/index.js";
import { deckStock } from "../../src/limits/index.js";
import { mixingWater, siteMix } from "../../src/mortar/index.js";
import { hoistTrips, soffitFace, takeOff } from "../../src/takeoff/index.js";
import { coverTonight } from "../../src/timing/index.js";
import { freshMortarTemperature, waterForMortarTemperature } from "../../src/weather/index.js";
import { entranceInFeet } from "../takeoff/entrance-job.js";

interface Run {
  readonly id: string;
  readonly solve: (input: never) => { readonly cautions: readonly string[] };
}

const board = { openings: [], board: { width: "4 ft", length: "8 ft" }, orientation: "upright", stagger: "0 in", studs: { spacing: "16 in", start: "0 in" }, edgesBacked: false, reuseOffcuts: false } as const;
const wall = (height: string): object => ({ ...board, wall: { kind: "rectangle", width: "12 ft", height } });
const joint = { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" } as const;
const rod = { bedJoint: joint, unitHeights: ["3-5/8 in"], datum: "bed to bed", bedJointLies: "over the unit", tape: "1/16 in" } as const;

const worked: readonly (readonly [Run, object, RegExp])[] = [
  [boardLayout, wall("7 ft"), /dust.*silica/],
  [cutStock, { wanted: [{ length: "60 in", count: 2 }], stock: ["120 in"], sawCut: "1/8 in" }, /glasses and gloves/],
  [cleanerOrder, { area: "1200 ft2", applications: 1, spreadingRate: "150 ft2/gal", waterParts: 3, waste: "10 %", packVolume: "1 gal" }, /burns skin and eyes/],
  [repointingDepth, { width: "3/8 in" }, /silica/],
  [coursing, { ...rod, height: "30 in", bedJoint: { ...joint, least: "3/8 in", most: "3/8 in" } }, /dust harms the lungs/],
  [mixingWater, { dryMass: "50 lb", bagMass: "50 lb", waterLow: "5 qt", waterHigh: "6 qt" }, /burns skin and eyes.*mask/],
  [siteMix, {
    type: "N", specification: "proportion", sandRatio: 3, volume: "9 ft3", bulkingFactor: 1.25,
    cementDensity: "94 lb/ft3", limeDensity: "40 lb/ft3", sandDensity: "80 lb/ft3", cementBag: "94 lb", limeBag: "50 lb",
  }, /burn skin and eyes.*mask/],
  [ledgerLine, {
    courseLine: "40 in", unitHeight: "7-5/8 in", bedJoint: "3/8 in", clearance: "4 in", groundFall: "6 in", foot: "along the ground",
    ledgerLength: "24 ft", studSpacing: "16 in", wetWeight: "20 lb/ft2", uncuredHeight: "4 ft", allowableLoadPerScrew: "60 lbf",
  }, /Nobody stands below/],
  [coverTonight, { workEnds: "2026-11-02T17:00-06:00", lowAndHigh: { low: "27 degF", high: "43 degF" }, rule: "MSJC 1999", meanBy: "mean of low and high" }, /carbon monoxide/],
  [hoistTrips, { packs: 28, packMass: "50 lb", hoistLoad: "440 lb" }, /nobody stands under a load/],
  [soffitFace, { length: "8 ft", depth: "3 ft" }, /overhead hangs by its bond alone/],
  [takeOff, entranceInFeet, /silica.*Wet mortar burns/],
];

describe("the answer of", () => {
  it.each(worked.map(([run, input, says]) => ({ id: run.id, run, input, says })))("$id says what can hurt", ({ run, input, says }) => {
    expect(run.solve(input as never).cautions.join("\n")).toMatch(says);
  });

  it("boardLayout says nothing of cutting where nothing is cut", () => {
    expect(boardLayout.solve(wall("8 ft") as never).cautions.join("\n")).not.toMatch(/silica/);
  });

  it("a calculation says it whatever it is asked", () => {
    for (const [{ definition }, says] of [[cutUnits, /silica/], [deckStock, /Scaffolds/], [freshMortarTemperature, /scalds/], [waterForMortarTemperature, /scalds/]] as const) {
      expect([definition.id, ...definition.cautions].join("\n")).toMatch(says);
    }
  });
});
