import { catalogue } from "../../../src/catalogue.js";
import type { AnyCallable } from "../../../src/core/callable.js";
import { type Problem, problem } from "../../../src/core/problems.js";
import type { Solution } from "../../../src/core/solution.js";
import type { RenderOptions } from "../../../src/render/index.js";
import { answersText, outputHtml } from "../shared/solution-html.js";
import { html } from "../shared/html.js";
import { several } from "../shared/words.js";
import { addressOf, fromAddress } from "./address.js";
import { afterQuiet, element } from "./elements.js";
import { type Inputs, jsonInput, rowInputs, shortMessage } from "./fields.js";
import { reachWideParts } from "./wide-parts.js";

/** Where the address keeps the units of the answers; no input has a hyphen in its name. */
const reading = "answers-in";

/** Nobody types in an address that is longer, and it would fill the paper. */
const longestOnPaper = 500;

/** Makes the panel of a page work: what is typed is worked out at once, by the package itself. */
export function openPanel(panel: HTMLElement): void {
  const run = catalogue.find(({ id }) => id === panel.dataset.id) as AnyCallable;
  const form = element("inputs", HTMLFormElement);
  const inputs = panel.dataset.nested === "true" ? jsonInput(form) : rowInputs(run, form);
  const [units, output, refused, said] = [element("reading", HTMLSelectElement), element("output", HTMLElement), element("refused", HTMLElement), element("said", HTMLElement)];
  const example = inputs.texts();
  const touched = new Set<string>();
  for (const control of panel.querySelectorAll<HTMLButtonElement | HTMLSelectElement>("button, select")) control.disabled = false;

  let words = "";
  const announce = afterQuiet(900, () => {
    if (said.textContent !== words) said.textContent = words;
  });
  const options = (): RenderOptions => (units.value === "" ? {} : { units: units.value as "us" | "si" | "both" });
  const texts = (): ReadonlyMap<string, string> => new Map([...inputs.texts(), [reading, units.value]]);

  const showSolution = (solution: Solution): void => {
    inputs.show([]);
    refused.hidden = true;
    output.innerHTML = outputHtml(run, solution, options()).text;
    reachWideParts();
    words = answersText(solution, options());
  };
  const showProblems = (problems: readonly Problem[], isAll: boolean): void => {
    // While somebody types, a field that he has not come to yet is not called missing.
    const seen = isAll ? problems : problems.filter(({ code, path: [key = ""] }) => code !== "missing" || touched.has(String(key)));
    const others = inputs.show(seen);
    refused.innerHTML = html`<p>${others.length > 0 ? "It cannot be worked out:" : "See the fields that are marked."}</p>${others.length > 0 && html`<ul>${others.map((one) => html`<li>${one.path.length === 0 ? shortMessage(one) : one.message}</li>`)}</ul>`}`.text;
    refused.hidden = seen.length === 0;
    // An answer to what stood there before must not stand beside what stands there now.
    output.innerHTML = html`<p class="note">There is no answer to these inputs.</p>`.text;
    words = `No answer: ${several(problems.length, "problem")}`;
  };
  const work = (isAll: boolean): readonly Problem[] => {
    const problems = attempt(run, inputs, showSolution);
    if (problems.length > 0) showProblems(problems, isAll);
    announce.later();
    return problems;
  };
  const point = (address: string): void => {
    const link = element("link", HTMLAnchorElement);
    link.href = address;
    if (link.href.length <= longestOnPaper) link.dataset.address = link.href;
    else delete link.dataset.address;
  };
  const keep = (): void => {
    const address = addressOf(texts());
    history.replaceState(undefined, "", address);
    point(address);
  };
  const live = afterQuiet(200, () => {
    work(false);
    keep();
  });
  const take = (given: ReadonlyMap<string, string>): void => {
    inputs.fill(given);
    units.value = given.get(reading) ?? "";
    point(addressOf(given));
    work(true);
  };

  form.addEventListener("input", ({ target }) => {
    if (target instanceof HTMLElement) touched.add(target.getAttribute("name") ?? "");
    live.later();
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    live.cancel();
    const problems = work(true);
    keep();
    if (problems.length > 0) (form.querySelector<HTMLElement>("[aria-invalid]") ?? refused).focus();
  });
  element("again", HTMLButtonElement).addEventListener("click", () => {
    touched.clear();
    take(example);
    history.replaceState(undefined, "", location.pathname + location.search);
  });
  element("print", HTMLButtonElement).addEventListener("click", () => {
    print();
  });
  addEventListener("hashchange", () => {
    const given = fromAddress();
    if (given !== undefined) take(given);
  });
  take(fromAddress() ?? example);
}

/** Works the inputs out; what is wrong with them comes back. */
function attempt(run: AnyCallable, inputs: Inputs, show: (solution: Solution) => void): readonly Problem[] {
  const given = inputs.read();
  if ("unreadable" in given) return [problem({ code: "refused", path: [], given: "", wanted: given.unreadable })];
  const tried = run.try(given.input);
  if (!tried.ok) return tried.problems;
  show(tried.solution);
  return [];
}
