// What can be and what cannot. Lives, rates and strengths are above nought, waits may be nought. No age is counted below 32
// degF, where water freezes; EN 1992-1-1's growth is for 28 days at the most. The other ends are our decision.
import { describe } from "vitest";
import { ageFactorByArrhenius } from "../../src/timing/age-factor-by-arrhenius.js";
import { ageFactorByDoubling } from "../../src/timing/age-factor-by-doubling.js";
import { ageForStrength } from "../../src/timing/age-for-strength.js";
import { concreteStrengthShare } from "../../src/timing/concrete-strength-share.js";
import { efflorescence } from "../../src/timing/efflorescence.js";
import { exposureShare } from "../../src/timing/exposure-share.js";
import { hyperbolicStrength } from "../../src/timing/hyperbolic-strength.js";
import { intervalAge } from "../../src/timing/interval-age.js";
import { intervalMaturity } from "../../src/timing/interval-maturity.js";
import { lifeAtTemperature } from "../../src/timing/life-at-temperature.js";
import { liftByLedger } from "../../src/timing/lift-by-ledger.js";
import { liftHeight } from "../../src/timing/lift-height.js";
import { meanOfTwo } from "../../src/timing/mean-of-two.js";
import { mixTimes } from "../../src/timing/mix-times.js";
import { strengthAtAge } from "../../src/timing/strength-at-age.js";
import { strengthShare } from "../../src/timing/strength-share.js";
import { timeByAgeFactor } from "../../src/timing/time-by-age-factor.js";
import { coverTonight } from "../../src/timing/cover-tonight.js";
import { equivalentAge } from "../../src/timing/equivalent-age.js";
import { exposureLeft } from "../../src/timing/exposure-left.js";
import { lastUnitToday } from "../../src/timing/last-unit-today.js";
import { maturity } from "../../src/timing/maturity.js";
import { mixClock } from "../../src/timing/mix-clock.js";
import { readingTimes } from "../../src/timing/reading-times.js";
import { recoatWindow } from "../../src/timing/recoat-window.js";
import { shelfLife } from "../../src/timing/shelf-life.js";
import { timeToAge } from "../../src/timing/time-to-age.js";
import { workWindows } from "../../src/timing/work-windows.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(ageFactorByArrhenius, { temperature: "from 32 degF, to 120 degF", reference: "from 32 degF, to 120 degF", activation: "from 1000 K, to 10000 K" });
  itHoldsTheLimits(ageFactorByDoubling, { temperature: "from 32 degF, to 120 degF", reference: "from 32 degF, to 120 degF" });
  itHoldsTheLimits(ageForStrength, { ultimate: "above 0 psi", rateConstant: "above 0 /d", delay: "from 0 h", strength: "from 0 psi" });
  itHoldsTheLimits(concreteStrengthShare, { age: "from 1 d, to 28 d", coefficient: "from 20 %, to 38 %" });
  itHoldsTheLimits(efflorescence, { dryFor: "from 0 d", wait: "above 0 d" });
  itHoldsTheLimits(exposureShare, { bare: "from 0 d", exposureLimit: "above 0 d", warnShare: "above 0 %, to 100 %, usually 80 %" });
  itHoldsTheLimits(hyperbolicStrength, { ultimate: "above 0 psi", rateConstant: "above 0 /d", delay: "from 0 h", age: "above 0 h" });
  itHoldsTheLimits(intervalAge, { lasts: "from 0 h", ageFactor: "from 0 %" });
  itHoldsTheLimits(intervalMaturity, { lasts: "from 0 h", temperature: "from -60 degF, to 212 degF", datumTemperature: "from 0 degF, to 50 degF" });
  itHoldsTheLimits(lifeAtTemperature, { lifeAtReference: "above 0 h", reference: "from 40 degF, to 120 degF", temperature: "from 40 degF, to 120 degF", activation: "from 1000 K, to 10000 K" });
  itHoldsTheLimits(liftByLedger, { wetWeight: "above 0 lb/ft2", ledgerCapacity: "above 0 lbf/ft" });
  itHoldsTheLimits(liftHeight, { wetWeight: "above 0 lb/ft2", ledgerCapacity: "above 0 lbf/ft", bedHolds: "above 0 ft", timeAtReference: "above 0 h", reference: "from 40 degF, to 120 degF", temperature: "from 40 degF, to 120 degF", activation: "from 1000 K, to 10000 K" });
  itHoldsTheLimits(meanOfTwo, { one: "any degF", other: "any degF" });
  itHoldsTheLimits(mixTimes, { mixing: "above 0 min", slakeLow: "above 0 min", slakeHigh: "above 0 min", remixing: "above 0 min", life: "above 0 min" });
  itHoldsTheLimits(strengthAtAge, { ultimate: "above 0 psi", rateConstant: "above 0 /d", delay: "from 0 h", age: "above 0 h", strength: "from 0 psi" });
  itHoldsTheLimits(strengthShare, { age: "from 1 d, to 28 d" });
  itHoldsTheLimits(timeByAgeFactor, { timeAtReference: "above 0 h", ageFactor: "above 0 %" });

  const hours = [50, 50, 50, 50, 50].map((degrees, index) => ({ at: `2026-11-02T${String(8 + 2 * index).padStart(2, "0")}:00`, temperature: `${String(degrees)} degF` }));
  const record = { zone: "America/Chicago", every: "2 h", readingIs: "mean until the next", readings: hours } as const;
  const recordLimits = { "record.every": "above 0 h, to 24 h", "record.readings.0.temperature": "from -60 degF, to 212 degF" };
  const day = Array.from({ length: 24 }, (_, hour) => ({ at: `2026-11-02T${String(hour).padStart(2, "0")}:00-06:00`, temperature: "36 degF", wind: "5 mph" }));
  itHoldsTheLimitsIn(coverTonight, "a record", { workEnds: "2026-11-02T00:00-06:00", record: { every: "1 h", readings: day }, rule: "MSJC 1999", meanBy: "mean of the hours" }, {
    "record.every": "above 0 h, to 24 h", "record.readings.0.temperature": "from -60 degF, to 140 degF", "record.readings.0.wind": "from 0 mph, to 150 mph",
  });
  itHoldsTheLimitsIn(coverTonight, "a low and a high", { workEnds: "2026-11-02T17:00-06:00", lowAndHigh: { low: "27 degF", high: "43 degF" }, rule: "MSJC 1999", meanBy: "mean of low and high" }, {
    "lowAndHigh.low": "from -60 degF, to 140 degF", "lowAndHigh.high": "from -60 degF, to 140 degF",
  });
  itHoldsTheLimitsIn(equivalentAge, "intervals", { rule: "Arrhenius", activation: "5000 K", reference: "20 degC", intervals: [{ lasts: "6 h", temperature: "22 degC" }] }, {
    activation: "from 1000 K, to 10000 K", reference: "from 32 degF, to 120 degF", "intervals.0.lasts": "above 0 d, to 3660 d", "intervals.0.temperature": "from -60 degF, to 212 degF",
  });
  itHoldsTheLimitsIn(exposureLeft, "a warning", { coatedOn: "2026-03-01", claddingOn: "2026-04-25", exposureLimit: "60 d", warnShare: "80 %" }, { exposureLimit: "above 0 d, to 3660 d", warnShare: "above 0 %, to 100 %" });
  itHoldsTheLimitsIn(lastUnitToday, "a record", { record: { ...record, readings: [...hours, { at: "2026-11-02T18:00", temperature: "31 degF" }] }, cure: "2 h", reference: "50 degF", activation: "5000 K" }, {
    ...recordLimits, cure: "above 0 d, to 60 d", reference: "from 40 degF, to 120 degF", activation: "from 1000 K, to 10000 K",
  });
  itHoldsTheLimitsIn(maturity, "intervals", { datumTemperature: "14 degF", intervals: [{ lasts: "6 h", temperature: "50 degF" }] }, { datumTemperature: "from 0 degF, to 50 degF" });
  itHoldsTheLimitsIn(mixClock, "warmth", {
    mixing: "3 min", slakeLow: "5 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h", firstWater: "2026-06-01T09:40[America/Chicago]",
    warmth: { temperature: "70 degF", reference: "70 degF", rule: "Arrhenius", activation: "5000 K" },
  }, {
    mixing: "above 0 h, to 24 h", slakeLow: "above 0 h, to 24 h", slakeHigh: "above 0 h, to 24 h", remixing: "above 0 h, to 24 h", life: "above 0 h, to 48 h",
    "warmth.temperature": "from 40 degF, to 120 degF", "warmth.reference": "from 40 degF, to 120 degF", "warmth.activation": "from 1000 K, to 10000 K",
  });
  itHoldsTheLimitsIn(readingTimes, "a day", { zone: "America/Chicago", from: "2026-06-01T07:00", until: "2026-06-01T15:30", every: "4 h" }, { every: "from 5 min, to 1440 min" });
  itHoldsTheLimitsIn(recoatWindow, "rows", {
    firstPatch: "2026-06-01T08:00[America/Chicago]", lastPatch: "2026-06-01T11:00[America/Chicago]", hottestSurface: "86 degF",
    from: "71 degF", rows: [{ upTo: "80 degF", soonest: "6 h", latest: "48 h" }, { upTo: "90 degF", soonest: "4 h", latest: "36 h" }],
  }, { "rows.0.soonest": "from 0 d, to 366 d", "rows.0.latest": "above 0 d, to 366 d" });
  itHoldsTheLimitsIn(shelfLife, "a bag", { madeOn: "2026-01-15", useOn: "2026-03-01", shelfLife: "180 d" }, { shelfLife: "above 0 d, to 3660 d" });
  itHoldsTheLimitsIn(timeToAge, "one temperature", { age: "24 h", rule: "doubling", reference: "70 degF", temperature: "52 degF", start: "2026-03-07T08:00[America/Chicago]" }, {
    age: "above 0 d, to 3660 d", reference: "from 32 degF, to 120 degF", temperature: "from 32 degF, to 120 degF",
  });
  itHoldsTheLimitsIn(workWindows, "a wait", {
    rule: "doubling", reference: "70 degF", record: { ...record, readingIs: "momentary" }, holds: [{ work: "tooling", done: "2026-11-02T08:30[America/Chicago]", least: "20 min", typical: "30 min", most: "90 min" }],
  }, { ...recordLimits, reference: "from 32 degF, to 120 degF", "holds.0.least": "above 0 d, to 3660 d", "holds.0.typical": "above 0 d, to 3660 d", "holds.0.most": "above 0 d, to 3660 d" });
});
