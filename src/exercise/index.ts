/**
 * Exercises from calculations: problems with sensible values, blank sheets, keys, and the usual mistakes, each worked out
 * with the same formulas.
 *
 * @packageDocumentation
 */
export type { Level } from "./draw-input.js";
export type { Exercise } from "./drawn-exercise.js";
export { exercise, type ExerciseOptions, hasFormulas } from "./exercise.js";
export { exercises, type ExercisesOptions } from "./exercises.js";
export { handOut, type HandOut, type HandOutOptions } from "./hand-out.js";
export { isRight, mistakeOf } from "./marking.js";
export type { Mistake, MistakeKind } from "./mistake.js";
export type { Vary } from "./vary.js";
