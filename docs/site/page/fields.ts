import type { AnyCallable } from "../../../src/core/callable.js";
import type { Entries } from "../../../src/core/definition.js";
import { pathText, type Problem } from "../../../src/core/problems.js";
import { capital } from "../shared/words.js";
import { entriesOf, fieldId } from "../shared/inputs.js";
import { lineAt, placeAt } from "./json-places.js";

/** What a reader fills in: reads it, fills it, and shows what is wrong where it is wrong. */
export interface Inputs {
  /** What stands in the fields, as texts. */
  readonly texts: () => ReadonlyMap<string, string>;
  readonly fill: (texts: ReadonlyMap<string, string>) => void;
  /** The input for the calculation, or why there is none. */
  readonly read: () => { readonly input: unknown } | { readonly unreadable: string };
  /** Shows problems at their fields and gives back those that have none; marks are taken off where there are no more. */
  readonly show: (problems: readonly Problem[]) => readonly Problem[];
}

/** A problem's message without the name of the field, beside which it stands. */
export function shortMessage({ message, path, says }: Problem): string {
  const label = says === "" ? pathText(path) : `${pathText(path)} (${says})`;
  return capital(message.startsWith(`${label}: `) ? message.slice(label.length + 2) : message);
}

/** One field an input. */
export function rowInputs(run: AnyCallable, form: HTMLFormElement): Inputs {
  const entries = entriesOf(run) as Entries;
  const fields = new Map(Object.keys(entries).map((name) => [name, form.elements.namedItem(name) as HTMLInputElement | HTMLSelectElement]));
  const value = (name: string, text: string): unknown => {
    const row = entries[name];
    return row !== undefined && "oneOf" in row ? (row.oneOf.find((one) => String(one) === text) ?? text) : text;
  };
  const texts = (): ReadonlyMap<string, string> => new Map([...fields].map(([name, field]) => [name, field.value.trim()]));
  return {
    texts,
    fill(given) {
      for (const [name, field] of fields) field.value = given.get(name) ?? "";
    },
    read: () => ({ input: Object.fromEntries([...texts()].filter(([, text]) => text !== "").map(([name, text]) => [name, value(name, text)])) }),
    show(problems) {
      const isAt = (key: string) => (problem: Problem): boolean => problem.path[0] === key;
      const pairs = [...form.querySelectorAll<HTMLElement>("[data-pair]")].map((pair) => pair.dataset.pair ?? "");
      for (const word of pairs) tell(`pair-${word}-problem`, problems.filter(isAt(word)).map(shortMessage));
      for (const [name, field] of fields) {
        const own = problems.filter(isAt(name));
        const ofPair = problems.some(isAt(entries[name]?.either ?? ""));
        tell(`${fieldId(name)}-problem`, own.map(shortMessage));
        if (own.length > 0 || ofPair) field.setAttribute("aria-invalid", "true");
        else field.removeAttribute("aria-invalid");
      }
      return problems.filter(({ path: [key = ""] }) => !fields.has(String(key)) && !pairs.includes(String(key)));
    },
  };
}

/** One field for all of it, as JSON. */
export function jsonInput(form: HTMLFormElement): Inputs {
  const field = form.elements.namedItem("input") as HTMLTextAreaElement;
  return {
    texts: () => new Map([["input", field.value.trim()]]),
    fill(given) {
      field.value = given.get("input") ?? "";
    },
    read() {
      try {
        return { input: JSON.parse(field.value) as unknown };
      } catch (error) {
        return { unreadable: `This is no JSON: ${error instanceof Error ? error.message : "it cannot be read"}` };
      }
    },
    show(problems) {
      const list = document.getElementById("in-input-problem") as HTMLElement;
      list.replaceChildren(...problems.map((one) => {
        const item = Object.assign(document.createElement("li"), { textContent: `${capital(one.message)} ` });
        // Where the whole is at fault, or no JSON, there is no line to lead to.
        if (one.path.length > 0) item.append(toLine(field, one.path));
        return item;
      }));
      list.hidden = problems.length === 0;
      if (problems.length > 0) field.setAttribute("aria-invalid", "true");
      else field.removeAttribute("aria-invalid");
      return [];
    },
  };
}

/** A button that leads to the line of the text where a problem lies, and marks what is at fault there. */
function toLine(field: HTMLTextAreaElement, path: Problem["path"]): HTMLButtonElement {
  const { start, end } = placeAt(field.value, path);
  const line = lineAt(field.value, start);
  const button = Object.assign(document.createElement("button"), { type: "button", className: "to-line", textContent: `Line ${String(line)}` });
  button.addEventListener("click", () => {
    field.focus();
    field.setSelectionRange(start, end);
    // A browser does not scroll a field to what is marked in it; lines that wrap make it land somewhat above.
    field.scrollTop = Math.max(0, (line - 3) * Number.parseFloat(getComputedStyle(field).lineHeight));
  });
  return button;
}

function tell(id: string, messages: readonly string[]): void {
  const place = document.getElementById(id) as HTMLElement;
  const text = messages.join(" ");
  if (place.textContent !== text) place.textContent = text;
  place.hidden = text === "";
}
