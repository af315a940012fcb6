/**
 * Films of coating, wet and dry: how thick, how far a pack goes, how many to order, and whether the readings pass.
 *
 * @packageDocumentation
 */
export { cleanerOrder } from "./cleaner-order.js";
export { coatingOrder } from "./coating-order.js";
export { coatingPacks } from "./coating-packs.js";
export { coatingVolume } from "./coating-volume.js";
export { cureTests } from "./cure-tests.js";
export { dryFilm } from "./dry-film.js";
export { filmAllowance } from "./film-allowance.js";
export { filmFromUsage } from "./film-from-usage.js";
export { filmMean } from "./film-mean.js";
export { type FilmReadingCheck, filmReadingCheck } from "./film-reading-check.js";
export type { ReadingFailure, ReadingVerdict } from "./film-reading-input.js";
export { type FilmReadingPlan, filmReadingPlan } from "./film-reading-plan.js";
export { filmSpreadingRate } from "./film-spreading-rate.js";
export { packCover } from "./pack-cover.js";
export { readingAreas } from "./reading-areas.js";
export { readingAreasPa2 } from "./reading-areas-pa2.js";
export { shortShare } from "./short-share.js";
export { type SpreadingRates, spreadingRate } from "./spreading-rate.js";
export { wetFilm } from "./wet-film.js";
export { type WetFilmBracket, wetFilmBracket } from "./wet-film-bracket.js";
