import { firstDrawn, shownExercise } from "../shared/exercise-html.js";
import { html, type Part } from "../shared/html.js";
import type { Listed } from "./listed.js";

const levels = ["round values", "fractions as the tape has them", "feet and inches, and units of both systems"];

/** An exercise of a calculation: drawn by a number, marked on the page, printed as a blank sheet. */
export function practiceSection({ run, definition }: Listed): Part {
  if (definition === undefined) return undefined;
  const { exercise, name, sheet, key } = shownExercise(run, firstDrawn);
  return html`<section class="practice" id="practice" aria-labelledby="practice-title"><h2 id="practice-title">An exercise</h2>
<p class="note">Its values are drawn as they are met on a wall. The same number gives the same exercise, so each pupil can have one of his own.</p>
<form id="practice-drawing" class="actions" novalidate>
<label for="practice-seed">Number <input id="practice-seed" inputmode="numeric" autocomplete="off" value="${firstDrawn.seed}" disabled></label>
<label for="practice-level">Values <select id="practice-level" disabled>${levels.map((words, index) => option(String(index + 1), `${String(index + 1)}: ${words}`, String(firstDrawn.level)))}</select></label>
<label for="practice-units">In <select id="practice-units" disabled>${option("us", "United States units", firstDrawn.units)}${option("si", "SI units", firstDrawn.units)}</select></label>
<button type="button" id="practice-next" class="plain" disabled>Draw the next</button>
</form>
<p id="practice-problem" class="asked-in-words">${exercise.problem}</p>
<form id="practice-answering" class="actions" novalidate>
<label for="practice-answer">Your answer, with its unit <input id="practice-answer" autocomplete="off" aria-describedby="practice-mark" disabled></label>
<button type="submit" disabled>Mark it</button>
<button type="button" id="practice-print" class="plain" disabled>Print a blank sheet</button>
</form>
<p id="practice-mark" role="status"></p>
<details id="practice-key"><summary>The answer, worked, and the usual mistakes</summary><div id="practice-worked">${key}</div></details>
<div id="practice-sheet" class="on-paper"><p id="practice-name">${name}</p><div id="practice-blank">${sheet}</div></div></section>`;
}

function option(value: string, words: string, chosen: string): Part {
  return html`<option value="${value}"${value === chosen && " selected"}>${words}</option>`;
}
