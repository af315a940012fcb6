// Results that the pictures are drawn from: demo data of our own.
import { dryFilm } from "../../src/film/dry-film.js";
import { filmReadingCheck } from "../../src/film/film-reading-check.js";
import { bondPattern } from "../../src/layout/bond-pattern.js";
import { coursing } from "../../src/layout/coursing.js";
import { assemblyWeight } from "../../src/limits/assembly-weight.js";
import { movementLayout } from "../../src/movement/movement-layout.js";
import type { CoursedWall } from "../../src/pictures/coursed-wall.js";
import type { FilmCoat } from "../../src/pictures/film-coats.js";
import type { WallSection } from "../../src/pictures/section-layers.js";
import type { TemperatureRecord } from "../../src/pictures/temperature-record.js";
import { equivalentAge } from "../../src/timing/equivalent-age.js";
import { workWindows } from "../../src/timing/work-windows.js";
import { masonryWeather } from "../../src/weather/masonry-weather.js";

const joint = { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" } as const;

/** 8 units a course, or 7 and two halves; 10 courses of 4 in. */
export const pier: CoursedWall = {
  width: "95-5/8 in",
  height: "40 in",
  panels: [
    {
      left: "0 in",
      bottom: "0 in",
      coursing: coursing({ height: "40 in", unitHeights: ["3-5/8 in"], bedJoint: joint, datum: "bed to bed", bedJointLies: "over the unit", tape: "1/16 in" }),
      bond: bondPattern({ length: "95-5/8 in", unitLength: "11-5/8 in", headJoint: joint, left: { kind: "plain" }, right: { kind: "plain" }, offset: "50 %" }),
    },
  ],
};

const window = { left: "9 ft", bottom: "3 ft", width: "4 ft", height: "5 ft" } as const;
const movement = movementLayout({
  wall: { kind: "rectangle", width: "30 ft", height: "18 ft" },
  leftEnd: { at: "inside corner" },
  rightEnd: { at: "outside corner", firstJointWithin: "6 ft" },
  openings: [{ shape: { kind: "rectangle", width: window.width, height: window.height }, left: window.left, bottom: window.bottom }],
  floorLines: ["9 ft"],
  backingJoints: { upright: ["20 ft"], level: [] },
  mostAcross: "12 ft",
  mostUp: "12 ft",
});

/** A wall in the panels that its movement joints leave, with a window. */
export const wall = {
  width: "30 ft",
  height: "18 ft",
  movement,
  openings: [window],
  panels: movement.panels.map(({ left, bottom, width, height }) => ({
    left,
    bottom,
    coursing: coursing({ height, unitHeights: ["7-5/8 in"], bedJoint: joint, datum: "bed to bed", bedJointLies: "under the unit", tape: "1/16 in", leastCut: "3 in" }),
    bond: bondPattern({ length: width, unitLength: "15-5/8 in", headJoint: joint, left: { kind: "plain" }, right: { kind: "joint" }, offset: "50 %", leastCut: "1 in" }),
  })),
} as const satisfies CoursedWall;

/** 25 courses of 4 in, the joint over the unit. */
export const rod = coursing({ height: "8 ft 4 in", unitHeights: ["3-5/8 in"], bedJoint: joint, datum: "bed to bed", bedJointLies: "over the unit", tape: "1/16 in" });

/** Courses of very different heights, in millimetres, with a cut one. */
export const mixedRod = coursing({ height: "1200 mm", unitHeights: ["30 mm", "200 mm", "30 mm", "65 mm"], bedJoint: { least: "8 mm", wanted: "10 mm", most: "12 mm" }, datum: "unit to unit", tape: "1 mm", leastCut: "20 mm" });

/** 90 courses of 4 in. */
export const longRod = coursing({ height: "30 ft", unitHeights: ["3-5/8 in"], bedJoint: joint, datum: "bed to bed", bedJointLies: "over the unit", tape: "1/16 in" });

/** From the studs out, with two layers that are too thin for the scale. */
export const section: WallSection = {
  layers: [
    { name: "studs", of: "studs", thickness: "3-1/2 in", faceWidth: "1-1/2 in", spacing: "16 in" },
    { name: "sheathing", of: "sheathing", thickness: "1/2 in" },
    { name: "building paper", of: "sheet", thickness: "10 mil" },
    { name: "cement board", of: "board", thickness: "1/2 in" },
    { name: "barrier", of: "sheet", thickness: "26 mil" },
    { name: "setting bed", of: "mortar", thickness: "1/2 in" },
    { name: "stone", of: "stone", thickness: "1-1/4 in" },
  ],
  // The example of assemblyWeight, worked by hand there: 15.625, 5.5 and 1 lb/ft2.
  weight: assemblyWeight({
    layers: [
      { name: "stone", part: "unit", from: "density", thickness: "1-1/4 in", density: "150 lb/ft3", wetGain: "4 %" },
      { name: "setting bed", part: "veneer", from: "density", thickness: "1/2 in", density: "132 lb/ft3", wetGain: "10 %" },
      { name: "joint mortar", part: "veneer", from: "weight", weight: "1 lb/ft2", wetGain: "10 %" },
    ],
  }),
};

const wetSpots = [{ name: "left of the window", readings: ["16 mil", "18 mil"] }, { readings: ["14 mil"] }, { teeth: [{ lastWetTooth: "18 mil", firstDryTooth: "20 mil" }, { lastWetTooth: "20 mil" }] }] as const;
const drySpots = [["9 mil", "10 mil", "11 mil"], ["11 mil", "11 mil", "11 mil"], ["8 mil", "8 mil", "8 mil"], ["12 mil", "12 mil", "12 mil"], ["10 mil", "10 mil", "10 mil"]].map((readings) => ({ readings: readings as "9 mil"[] }));

/** A wet coat that fails its own band, and a dry one that is judged by the means of its spots. */
export const coats = [
  { name: "First coat", spots: wetSpots, check: filmReadingCheck({ film: "wet", rule: "band", least: "15 mil", most: "22 mil", spots: wetSpots }) },
  { name: "Both coats", spots: drySpots, check: filmReadingCheck({ film: "dry", rule: "SSPC-PA 9 level 3", least: "10 mil", most: "14 mil", spots: drySpots }), expected: dryFilm({ wetFilm: "20 mil", volumeSolids: "50 %", coats: 1 }).dryFilm },
] as const satisfies readonly FilmCoat[];

const zone = "America/Chicago";
const hour = (number: number): string => `2026-11-0${String(2 + Math.floor(number / 24))}T${String(number % 24).padStart(2, "0")}:00`;
const air = [48, 44, 41, 38, 35, 33, 31, 28, 26, 24, 22, 30, 36, 42].map((degrees, index) => ({ at: hour(14 + index), temperature: `${String(degrees) as "48"} degF` as const }));
const readings = air.map(({ at }) => ({ at, temperature: "70 degF" as const }));
const record = { zone, every: "1 h", readingIs: "momentary", readings } as const;

/** Fourteen hours from the afternoon into a frost; the wall is heated to the reference temperature, so age and clock agree. */
export const temperatures: TemperatureRecord = {
  weather: masonryWeather({ ruleSet: "TMS 602-02", stopBelow: "25 degF", record: { zone, every: "1 h", readings: air } }),
  age: equivalentAge({ rule: "doubling", reference: "70 degF", record }),
  holds: workWindows({
    rule: "doubling",
    reference: "70 degF",
    record,
    holds: [
      { work: "tooling", done: "2026-11-02T15:00", least: "30 min", typical: "1 h", most: "2 h" },
      { work: "coat", done: "2026-11-02T14:00", least: "4 h" },
      { work: "ledger", done: "2026-11-02T16:00", least: "16 h" },
    ],
  }),
};

/** The same temperatures over and over, hour by hour. */
export function longWeather(days: number): TemperatureRecord {
  const long = Array.from({ length: days * 24 }, (_, index) => ({
    at: `2026-07-${String(1 + Math.floor(index / 24)).padStart(2, "0")}T${String(index % 24).padStart(2, "0")}:00`,
    temperature: `${String(15 + Math.abs((index % 24) - 12)) as "15"} degC` as const,
  }));
  return { weather: masonryWeather({ ruleSet: "UK warranty standards 2023", record: { zone: "Europe/London", every: "1 h", readings: long } }) };
}
