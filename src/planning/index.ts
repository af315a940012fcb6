/**
 * Planning: how long a crew takes, what came from which batch, what was used against what was planned, and a plan of days.
 *
 * @packageDocumentation
 */
export { availabilityRange, ratesFromMemory, stagesOfTheTrade, usualAvailability, usualRates, usualStages } from "../data/planning.js";
export { areaLabour } from "./area-labour.js";
export type { BatchEntry, BatchPlace } from "./batch-log-input.js";
export { type BatchRecord, batchRecord, type LotUse, type WaterOfMaterial } from "./batch-record.js";
export type { BatchRow, ReadingsMeanwhile } from "./batch-rows.js";
export { type BatchesAt, batchesAt } from "./batches-at.js";
export { bedFromUsage } from "./bed-from-usage.js";
export { countLabour } from "./count-labour.js";
export { type CrewDays, crewDays, type TaskLabour } from "./crew-days.js";
export { crewDuration } from "./crew-duration.js";
export { batchesInDay } from "./batches-in-day.js";
export { type DayPlan, dayPlan, type PlannedDay, type PlannedStage } from "./day-plan.js";
export { labourTime } from "./labour-time.js";
export { lengthLabour } from "./length-labour.js";
export { placeArea } from "./place-area.js";
export { shiftShare } from "./shift-share.js";
export type { StageDay } from "./stage-days.js";
export type { StageHold } from "./stage-hold.js";
export { stretchLabour } from "./stretch-labour.js";
export { toolTime } from "./tool-time.js";
export { type UsedAgainstPlan, usedAgainstPlan } from "./used-against-plan.js";
export { volumeLabour } from "./volume-labour.js";
export { wasteFromUsage } from "./waste-from-usage.js";
export { waterFromUsage } from "./water-from-usage.js";
export { waterRatio } from "./water-ratio.js";
export { waterSpread } from "./water-spread.js";
