// What can be and what cannot. Work, rates and crews are above nought; a day has 24 hours; nobody is there more than all
// of the time; breaks may be nought. Three days' pay for one is our end.
import { describe } from "vitest";
import { areaLabour } from "../../src/planning/area-labour.js";
import { batchesInDay } from "../../src/planning/batches-in-day.js";
import { bedFromUsage } from "../../src/planning/bed-from-usage.js";
import { countLabour } from "../../src/planning/count-labour.js";
import { crewDuration } from "../../src/planning/crew-duration.js";
import { labourTime } from "../../src/planning/labour-time.js";
import { lengthLabour } from "../../src/planning/length-labour.js";
import { placeArea } from "../../src/planning/place-area.js";
import { shiftShare } from "../../src/planning/shift-share.js";
import { stretchLabour } from "../../src/planning/stretch-labour.js";
import { toolTime } from "../../src/planning/tool-time.js";
import { volumeLabour } from "../../src/planning/volume-labour.js";
import { wasteFromUsage } from "../../src/planning/waste-from-usage.js";
import { waterFromUsage } from "../../src/planning/water-from-usage.js";
import { waterRatio } from "../../src/planning/water-ratio.js";
import { waterSpread } from "../../src/planning/water-spread.js";
import { batchRecord } from "../../src/planning/batch-record.js";
import { batchesAt } from "../../src/planning/batches-at.js";
import { crewDays } from "../../src/planning/crew-days.js";
import { dayPlan } from "../../src/planning/day-plan.js";
import { usedAgainstPlan } from "../../src/planning/used-against-plan.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(areaLabour, { area: "from 0 ft2", perArea: "above 0 ft2", hours: "above 0 h", factor: "above 0 %" });
  itHoldsTheLimits(batchesInDay, { volume: "above 0 ft3", labourToday: "above 0 h", labour: "above 0 h", batch: "above 0 ft3" });
  itHoldsTheLimits(bedFromUsage, { bagsUsed: "above 0", bagYield: "above 0 ft3", lossShare: "from 0 %, below 100 %", area: "above 0 ft2", plannedBed: "above 0 in" });
  itHoldsTheLimits(countLabour, { count: "from 0", perCount: "above 0", hours: "above 0 h", factor: "above 0 %" });
  itHoldsTheLimits(crewDuration, { labour: "above 0 h", crew: "above 0", availability: "above 0 %, to 100 %", equivalent: "above 0 %, to 300 %", personDay: "above 0 h, to 24 h, usually 8 h" });
  itHoldsTheLimits(labourTime, { labour: "above 0 h", persons: "above 0", availability: "above 0 %, to 100 %", shiftShare: "above 0 %, to 100 %" });
  itHoldsTheLimits(lengthLabour, { length: "from 0 ft", perLength: "above 0 ft", hours: "above 0 h", factor: "above 0 %" });
  itHoldsTheLimits(placeArea, { left: "any ft", right: "any ft", bottom: "any ft", top: "any ft" });
  itHoldsTheLimits(shiftShare, { shift: "above 0 h, to 24 h", breaks: "from 0 h" });
  itHoldsTheLimits(stretchLabour, { lasts: "from 0 h", persons: "above 0", availability: "above 0 %, to 100 %", shiftShare: "above 0 %, to 100 %" });
  itHoldsTheLimits(toolTime, { workday: "above 0 h, to 24 h", lunch: "from 0 h", travel: "from 0 h", breaks: "from 0 h", paid: "above 0 h, to 24 h", personDay: "above 0 h, to 24 h, usually 8 h" });
  itHoldsTheLimits(volumeLabour, { volume: "from 0 ft3", perVolume: "above 0 ft3", hours: "above 0 h", factor: "above 0 %" });
  itHoldsTheLimits(wasteFromUsage, { bought: "above 0", leftOver: "from 0", netPacks: "above 0", waste: "from 0 %, below 100 %" });
  itHoldsTheLimits(waterFromUsage, { bagsUsed: "above 0", water: "above 0 qt", waterLow: "above 0 qt", waterHigh: "above 0 qt" });
  itHoldsTheLimits(waterRatio, { dryMass: "above 0 lb", water: "from 0 qt" });
  itHoldsTheLimits(waterSpread, { driest: "above 0 %", wettest: "above 0 %" });

  const batches = [{
    batch: "14", material: "setting mortar", lot: "7731", dryMass: "50 lb", water: "5.3 qt", firstWater: "2026-10-05T09:40", wallTemperature: "51 degF",
    places: [{ elevation: "E3", left: "1 ft", right: "18 ft", bottom: "2 ft", top: "3 ft" }],
  }];
  const edge = "from 0 ft, to 10000 ft";
  const batchLimits = {
    "batches.0.dryMass": "above 0 lb", "batches.0.water": "above 0 qt", "batches.0.wallTemperature": "from -20 degF, to 160 degF",
    "batches.0.places.0.left": edge, "batches.0.places.0.right": edge, "batches.0.places.0.bottom": edge, "batches.0.places.0.top": edge,
  };
  itHoldsTheLimitsIn(batchRecord, "a batch", { zone: "America/Chicago", batches }, batchLimits);
  itHoldsTheLimitsIn(batchesAt, "a unit", { unit: { elevation: "E3", across: "7 ft", up: "2.5 ft" }, zone: "America/Chicago", batches }, { ...batchLimits, "unit.across": "from 0 ft", "unit.up": "from 0 ft" });
  const rate = { of: "area", amount: "2400 ft2", per: "100 ft2", hours: "22 h", factor: 1 };
  itHoldsTheLimitsIn(crewDays, "tasks", { tasks: [{ name: "setting", rate }], day: { workday: "10 h", lunch: "1 h", travel: "0.5 h", breaks: "0.5 h", paid: "9 h" }, crew: 5, availability: "80 %" }, {
    "tasks.0.rate.amount": "above 0 ft2", "tasks.0.rate.per": "above 0 ft2", "tasks.0.rate.hours": "above 0 h, to 100000 h", "tasks.0.rate.factor": "above 0, to 20", crew: "above 0, to 1000", availability: "above 0 %, to 100 %",
    "day.workday": "above 0 h, to 24 h", "day.paid": "above 0 h, to 24 h", "day.lunch": "from 0 h, to 24 h", "day.travel": "from 0 h, to 24 h", "day.breaks": "from 0 h, to 24 h",
  });
  const readings = Array.from({ length: 12 }, (_, day) => ({ at: `2026-06-${String(day + 1).padStart(2, "0")}T07:00`, temperature: "70 degF" }));
  const air = { zone: "America/Chicago", every: "24 h", readings };
  itHoldsTheLimitsIn(dayPlan, "stages", {
    start: "2026-06-01T07:00", zone: "America/Chicago", crew: 4, availability: 1, rule: "doubling", activation: "5000 K", reference: "70 degF", holdsBy: "least",
    shifts: { from: "07:00", until: "15:30", breaks: "0.5 h", workdays: ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday"] },
    wall: { ...air, readingIs: "mean until the next" },
    weather: { ruleSet: "TMS 602-02", stopBelow: "25 degF", record: air },
    stages: [
      {
        name: "setting", inWeather: "goes on", rate: { of: "area", amount: "200 ft2", per: "100 ft2", hours: "16 h", factor: 1 }, persons: 4, frostCure: "1 d",
        batches: { volume: "8 ft3", batch: "1 ft3", mixing: "3 min", slakeLow: "5 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h" },
      },
      { name: "pointing", inWeather: "goes on", rate: { of: "area", amount: "200 ft2", per: "100 ft2", hours: "8 h", factor: 1 }, hold: { work: "pointing", least: "24 h", typical: "30 h", most: "200 h" } },
    ],
  }, {
    crew: "above 0, to 1000", availability: "above 0 %, to 100 %", activation: "from 1000 K, to 10000 K", reference: "from 40 degF, to 120 degF", "shifts.breaks": "from 0 h, to 24 h", "weather.stopBelow": "from -20 degF, to 50 degF",
    "stages.0.persons": "above 0, to 1000", "stages.0.frostCure": "above 0 d, to 60 d", "stages.0.batches.volume": "above 0 ft3", "stages.0.batches.batch": "above 0 ft3",
    "stages.0.batches.mixing": "above 0 h, to 24 h", "stages.0.batches.slakeLow": "above 0 h, to 24 h", "stages.0.batches.slakeHigh": "above 0 h, to 24 h", "stages.0.batches.remixing": "above 0 h, to 24 h", "stages.0.batches.life": "above 0 h, to 24 h",
    "stages.1.hold.least": "above 0 d, to 366 d", "stages.1.hold.typical": "above 0 d, to 366 d", "stages.1.hold.most": "above 0 d, to 366 d",
  });
  itHoldsTheLimitsIn(usedAgainstPlan, "of all four", {
    items: [
      { of: "film", name: "barrier", volumeUsed: "10 gal", area: "400 ft2", lossShare: "10 %", volumeSolids: "60 %", coats: 2, specified: "24 mil", tolerance: "10 %" },
      { of: "bed", name: "setting bed", bagsUsed: 36, bagYield: "0.5 ft3", lossShare: "10 %", area: "480 ft2", plannedBed: "1/2 in", tolerance: "10 %" },
      { of: "water", name: "water", bagsUsed: 36, water: "200 qt", waterLow: "5 qt", waterHigh: "6 qt" },
      { of: "waste", name: "flat units", bought: 66, leftOver: 3, netPacks: 60, waste: "10 %", tolerance: "2 %" },
    ],
  }, {
    "items.0.volumeUsed": "above 0 gal", "items.0.area": "above 0 ft2", "items.0.lossShare": "from 0 %, below 100 %", "items.0.volumeSolids": "above 0 %, to 100 %", "items.0.coats": "from 1", "items.0.specified": "above 0 mil", "items.0.tolerance": "from 0 %, below 100 %",
    "items.1.bagsUsed": "above 0", "items.1.bagYield": "above 0 ft3", "items.1.area": "above 0 ft2", "items.1.plannedBed": "above 0 in",
    "items.2.water": "above 0 qt", "items.2.waterLow": "above 0 qt", "items.2.waterHigh": "above 0 qt",
    "items.3.bought": "above 0", "items.3.leftOver": "from 0", "items.3.netPacks": "above 0", "items.3.waste": "from 0 %, below 100 %", "items.3.tolerance": "from 0 %, below 100 %",
  });
});
