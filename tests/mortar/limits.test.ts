// What can be and what cannot. What is mixed, spread or bought has an amount above nought; waits and losses may be nought.
// Sand is 2-1/4 to 3-1/2 times cement and lime (ASTM C270, table of proportions); sand bulks to at most double. Law and
// table of a batch's life hold from 40 to 120 degF; that, the range of angles and that of air are our decision.
import { describe } from "vitest";
import { bagYield } from "../../src/mortar/bag-yield.js";
import { batchSize } from "../../src/mortar/batch-size.js";
import { batchVolume } from "../../src/mortar/batch-volume.js";
import { bedContact } from "../../src/mortar/bed-contact.js";
import { bedMortarRange } from "../../src/mortar/bed-mortar-range.js";
import { bedMortar } from "../../src/mortar/bed-mortar.js";
import { bulkingByVoids } from "../../src/mortar/bulking-by-voids.js";
import { hollowFill } from "../../src/mortar/hollow-fill.js";
import { levellingCoat } from "../../src/mortar/levelling-coat.js";
import { mayAddWater } from "../../src/mortar/may-add-water.js";
import { mayMoveUnit } from "../../src/mortar/may-move-unit.js";
import { mixByParts } from "../../src/mortar/mix-by-parts.js";
import { mixYield } from "../../src/mortar/mix-yield.js";
import { mixingWater } from "../../src/mortar/mixing-water.js";
import { notchedBed } from "../../src/mortar/notched-bed.js";
import { partVolume } from "../../src/mortar/part-volume.js";
import { sandPart } from "../../src/mortar/sand-part.js";
import { siteMix } from "../../src/mortar/site-mix.js";
import { spreadAhead } from "../../src/mortar/spread-ahead.js";
import { squareNotchBed } from "../../src/mortar/square-notch-bed.js";
import { uNotchBed } from "../../src/mortar/u-notch-bed.js";
import { vNotchBed } from "../../src/mortar/v-notch-bed.js";
import { waterFromRatio } from "../../src/mortar/water-from-ratio.js";
import { waterLeft } from "../../src/mortar/water-left.js";
import { absoluteVolume } from "../../src/mortar/absolute-volume.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(bagYield, { dryMass: "above 0 lb", water: "above 0 qt", wetDensity: "above 0 lb/ft3" });
  itHoldsTheLimits(batchSize, { life: "above 0 min", lifeAtReference: "above 0 min", reference: "from 40 degF, to 120 degF", temperature: "from 40 degF, to 120 degF", activation: "from 1000 K, to 10000 K", slake: "from 0 min", carry: "from 0 min", margin: "from 0 min", placingRate: "above 0 ft2/h", thickness: "above 0 in", mixerHolds: "above 0 ft3", volume: "above 0 ft3", bagYield: "above 0 ft3", bagMass: "above 0 lb", waterLow: "above 0 qt", waterHigh: "above 0 qt" });
  itHoldsTheLimits(batchVolume, { life: "above 0 min", slake: "from 0 min", carry: "from 0 min", margin: "from 0 min", placingRate: "above 0 ft2/h", thickness: "above 0 in", mixerHolds: "above 0 ft3", volume: "above 0 ft3", bagYield: "above 0 ft3", bagMass: "above 0 lb" });
  itHoldsTheLimits(bedContact, { bed: "above 0 in", gap: "above 0 in" });
  itHoldsTheLimits(bedMortarRange, { area: "above 0 ft2", lowBed: "above 0 in", typicalBed: "above 0 in", highBed: "above 0 in", backButter: "from 0 in", butteredShare: "from 0 %, to 100 %", waste: "from 0 %, below 100 %", bagYield: "above 0 ft3" });
  itHoldsTheLimits(bedMortar, { area: "above 0 ft2", bed: "above 0 in", backButter: "from 0 in", butteredShare: "from 0 %, to 100 %", waste: "from 0 %, below 100 %", bagYield: "above 0 ft3" });
  itHoldsTheLimits(bulkingByVoids, { cementVolume: "above 0 ft3", pasteVolume: "above 0 ft3", sandPart: "above 0 %", voids: "above 0 %, below 100 %" });
  itHoldsTheLimits(hollowFill, { area: "above 0 ft2", deepest: "above 0 in, to 0.375 in", meanHollow: "above 0 in", bagYield: "above 0 ft3" });
  itHoldsTheLimits(levellingCoat, { area: "above 0 ft2", thickness: "above 0 in", overdriven: "from 0, whole", dimpleWidth: "above 0 in", dimpleDepth: "above 0 in", waste: "from 0 %, below 100 %", bagYield: "above 0 ft3" });
  itHoldsTheLimits(mayAddWater, { age: "from 0 min" });
  itHoldsTheLimits(mayMoveUnit, { sinceSet: "from 0 min", adjustTime: "above 0 min" });
  itHoldsTheLimits(mixByParts, { volume: "above 0 ft3", cementPart: "from 0 %", limePart: "from 0 %", sandPart: "above 0 %", bulkingFactor: "from 100 %, to 200 %", cementDensity: "above 0 lb/ft3", limeDensity: "above 0 lb/ft3", sandDensity: "above 0 lb/ft3", cementBag: "above 0 lb", limeBag: "above 0 lb" });
  itHoldsTheLimits(mixYield, { partsVolume: "above 0 ft3", partsMass: "above 0 lb", air: "from 0 %, below 50 %" });
  itHoldsTheLimits(mixingWater, { dryMass: "above 0 lb", bagMass: "above 0 lb", waterLow: "above 0 qt", waterHigh: "above 0 qt" });
  itHoldsTheLimits(notchedBed, { depth: "above 0 in", width: "above 0 in", tooth: "from 0 in", angle: "from 30 deg, to 90 deg" });
  itHoldsTheLimits(partVolume, { mass: "above 0 lb", relativeDensity: "above 0 %, to 1200 %" });
  itHoldsTheLimits(sandPart, { limePart: "from 0 %", sandRatio: "above 0 %" });
  itHoldsTheLimits(siteMix, { sandRatio: "from 225 %, to 350 %", volume: "above 0 ft3", bulkingFactor: "from 100 %, to 200 %", cementDensity: "above 0 lb/ft3", limeDensity: "above 0 lb/ft3", sandDensity: "above 0 lb/ft3", cementBag: "above 0 lb", limeBag: "above 0 lb" });
  itHoldsTheLimits(spreadAhead, { openTime: "above 0 min", openShare: "above 0 %, to 100 %", placingRate: "above 0 ft2/h", height: "above 0 ft", longestRun: "above 0 ft" });
  itHoldsTheLimits(squareNotchBed, { depth: "above 0 in", width: "above 0 in", tooth: "above 0 in", angle: "from 30 deg, to 90 deg" });
  itHoldsTheLimits(uNotchBed, { depth: "above 0 in", width: "above 0 in", tooth: "above 0 in", angle: "from 30 deg, to 90 deg" });
  itHoldsTheLimits(vNotchBed, { depth: "above 0 in", width: "above 0 in", tooth: "from 0 in", angle: "from 30 deg, to 90 deg" });
  itHoldsTheLimits(waterFromRatio, { dryMass: "above 0 lb", ratioLow: "above 0 %, to 100 %", ratioHigh: "above 0 %, to 100 %" });
  itHoldsTheLimits(waterLeft, { dryMass: "above 0 lb", bagMass: "above 0 lb", waterHigh: "above 0 qt", poured: "from 0 qt" });

  // No solid part of a mortar is twelve times as heavy as water; over half of air is foam.
  itHoldsTheLimitsIn(absoluteVolume, "parts by weight", { parts: [{ name: "cement", mass: "94 lb", relativeDensity: 3.15 }, { name: "sand", mass: "240 lb", relativeDensity: 2.65 }], water: "50 lb", air: "5 %" }, {
    "parts.1.mass": "above 0 lb", "parts.1.relativeDensity": "above 0, to 12", water: "above 0 lb", air: "from 0 %, below 50 %",
  });
});
