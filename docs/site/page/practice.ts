import { catalogue } from "../../../src/catalogue.js";
import type { AnyCallable } from "../../../src/core/callable.js";
import { InputError } from "../../../src/core/problems.js";
import { writeQuantity } from "../../../src/core/write-quantity.js";
import { type Exercise, isRight, type Level, mistakeOf } from "../../../src/exercise/index.js";
import { firstDrawn, type ShownExercise, shownExercise } from "../shared/exercise-html.js";
import { element } from "./elements.js";
import { shortMessage } from "./fields.js";
import { reachWideParts } from "./wide-parts.js";

/** Makes the exercise of a page work: another is drawn by its number, and answers are marked. */
export function openPractice(section: HTMLElement, id: string | undefined): void {
  const run = catalogue.find((one) => one.id === id) as AnyCallable;
  const [seed, level, units] = [element("practice-seed", HTMLInputElement), element("practice-level", HTMLSelectElement), element("practice-units", HTMLSelectElement)];
  const [answer, mark, key] = [element("practice-answer", HTMLInputElement), element("practice-mark", HTMLElement), element("practice-key", HTMLDetailsElement)];
  for (const control of section.querySelectorAll<HTMLInputElement | HTMLSelectElement | HTMLButtonElement>("input, select, button")) control.disabled = false;

  let shown: ShownExercise | undefined;
  const asked = (): ShownExercise => (shown ??= shownExercise(run, firstDrawn));
  const draw = (): void => {
    seed.ariaInvalid = String(!isNumber(seed.value));
    if (!isNumber(seed.value)) {
      mark.textContent = "The number of an exercise is whole, such as 12.";
      return;
    }
    shown = shownExercise(run, { seed: Number(seed.value), level: Number(level.value) as Level, units: units.value === "si" ? "si" : "us" });
    element("practice-problem", HTMLElement).textContent = shown.exercise.problem;
    element("practice-worked", HTMLElement).innerHTML = shown.key.text;
    element("practice-blank", HTMLElement).innerHTML = shown.sheet.text;
    element("practice-name", HTMLElement).textContent = shown.name;
    [answer.value, mark.textContent, key.open] = ["", "", false];
    reachWideParts();
  };

  for (const control of [seed, level, units]) control.addEventListener("change", draw);
  // Enter draws the number that was typed, not the next.
  element("practice-drawing", HTMLFormElement).addEventListener("submit", (event) => {
    event.preventDefault();
    draw();
  });
  element("practice-next", HTMLButtonElement).addEventListener("click", () => {
    if (isNumber(seed.value)) seed.value = String(Number(seed.value) + 1);
    draw();
  });
  element("practice-answering", HTMLFormElement).addEventListener("submit", (event) => {
    event.preventDefault();
    mark.textContent = verdict(asked().exercise, answer.value);
  });
  element("practice-print", HTMLButtonElement).addEventListener("click", () => {
    document.body.classList.add("prints-exercise");
    print();
  });
  // Not every browser waits in `print` until the paper is made.
  addEventListener("afterprint", () => {
    document.body.classList.remove("prints-exercise");
  });
}

/** Whether a text is the number of an exercise. */
function isNumber(text: string): boolean {
  return /^\d{1,9}$/.test(text.trim());
}

/** What is said of an answer. */
function verdict(exercise: Exercise, answer: string): string {
  try {
    if (isRight(exercise, answer)) return `Right: ${writeQuantity(exercise.asked.value, { digits: exercise.digits }).text}.`;
    const mistake = mistakeOf(exercise, answer);
    return mistake === undefined ? "Not right, and none of the usual mistakes gives it." : `Not right. It comes of this: ${mistake.says.join("; or ")}.`;
  } catch (error) {
    if (error instanceof InputError) return error.problems.map(shortMessage).join(" ");
    throw error;
  }
}
