/**
 * Timing: the clock of a batch, age and maturity over a record of temperatures, and what may be done when.
 *
 * @packageDocumentation
 */
export { usualHolds } from "../data/timing.js";
export { ageFactorByArrhenius } from "./age-factor-by-arrhenius.js";
export { ageFactorByDoubling } from "./age-factor-by-doubling.js";
export { ageForStrength } from "./age-for-strength.js";
export { concreteStrengthShare } from "./concrete-strength-share.js";
export { type CoverAsked, type CoverTonight, coverTonight } from "./cover-tonight.js";
export type { Cover, CoverRule } from "./cover-by-mean.js";
export type { MeanBy } from "./day-means.js";
export { type Efflorescence, efflorescence } from "./efflorescence.js";
export { type AgedInterval, type EquivalentAge, equivalentAge } from "./equivalent-age.js";
export { type ExposureLeft, exposureLeft } from "./exposure-left.js";
export { exposureShare } from "./exposure-share.js";
export { hyperbolicStrength } from "./hyperbolic-strength.js";
export { intervalAge } from "./interval-age.js";
export { intervalMaturity } from "./interval-maturity.js";
export { type LastUnitByRule, type LastUnitToday, lastUnitToday } from "./last-unit-today.js";
export { lifeAtTemperature } from "./life-at-temperature.js";
export { liftByLedger } from "./lift-by-ledger.js";
export { type LiftHeight, liftHeight } from "./lift-height.js";
export { type MaturedInterval, type Maturity, maturity } from "./maturity.js";
export { meanOfTwo } from "./mean-of-two.js";
export { type MixClock, mixClock } from "./mix-clock.js";
export { mixTimes } from "./mix-times.js";
export { readingTimes } from "./reading-times.js";
export { type RecoatWindow, recoatWindow } from "./recoat-window.js";
export type { RecoatRow } from "./recoat-window-input.js";
export { type ShelfLife, shelfLife } from "./shelf-life.js";
export { strengthAtAge } from "./strength-at-age.js";
export { strengthShare } from "./strength-share.js";
export { timeByAgeFactor } from "./time-by-age-factor.js";
export { type TimeToAge, timeToAge } from "./time-to-age.js";
export { type WaitingWork, type WorkWindow, type WorkWindows, workWindows } from "./work-windows.js";
