import type { Quantity } from "../core/quantity.js";
import { readQuantity } from "../core/read-quantity.js";
import { InputError, problem } from "../core/problems.js";
import type { Exercise } from "./drawn-exercise.js";
import type { Mistake } from "./mistake.js";
import { isSameAnswer } from "./same-answer.js";

/** Reads an answer as it was written down. */
function readAnswer({ asked }: Exercise, answer: string | number | Quantity): Quantity {
  const read = readQuantity(asked.value.dimension, answer, { path: ["answer"], propose: asked.shown });
  if ("code" in read) throw new InputError("exercise", [problem({ ...read, says: asked.says })]);
  return read;
}

/**
 * Whether an answer is right: a whole number to the piece, any other within one in the last of the digits asked for.
 *
 * @param answer - with its unit: `"0.55 ft3"`
 * @throws InputError if the answer cannot be read
 * @example
 * ```ts
 * const one = exercise(bagYield, { seed: 7, vary: { dryMass: "50 lb", water: "6 qt", wetDensity: "124 lb/ft3" } });
 * isRight(one, "0.5042 ft3"); // true
 * ```
 */
export function isRight(exercise: Exercise, answer: string | number | Quantity): boolean {
  return isSameAnswer({ value: exercise.asked.value, digits: exercise.digits }, readAnswer(exercise, answer));
}

/**
 * Which of the usual mistakes a wrong answer comes of; nothing where the answer is right, or wrong in some other way.
 *
 * @param answer - with its unit: `"6.05 ft3"`
 * @throws InputError if the answer cannot be read
 * @example
 * ```ts
 * const one = exercise(coatingOrder, { seed: 3, vary: { area: "900 ft2", wetFilm: "35 mil", coats: 1, waste: "20 %", packVolume: "5 gal" }, ask: "toOrder" });
 * one.asked.value.to("gal").toFixed(2); // "23.56"
 * mistakeOf(one, "24.54 gal").kinds; // ["wasteAsDivision"]
 * ```
 */
export function mistakeOf(exercise: Exercise, answer: string | number | Quantity): Mistake | undefined {
  const read = readAnswer(exercise, answer);
  if (isSameAnswer({ value: exercise.asked.value, digits: exercise.digits }, read)) return undefined;
  return exercise.mistakes.find((mistake) => isSameAnswer({ value: mistake.answer, digits: exercise.digits }, read));
}
