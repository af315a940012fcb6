import { type AnyCallable, spaced } from "../core/calculation.js";
import type { Limited } from "../core/read-entries.js";
import type { Definition, Entries, EntryDefinition, StepDefinition } from "../core/definition.js";

/** The limits that the inputs and steps of a calculation must keep, each as a line. */
export function limitsOfUse(of: AnyCallable): readonly string[] {
  const { definition, given } = of as Partial<{ readonly definition: Definition; readonly given: Entries }>;
  const rows: Readonly<Record<string, EntryDefinition | StepDefinition>> = { ...(definition?.given ?? given), ...definition?.steps };
  return Object.entries(rows).flatMap(([name, row]) => {
    if ("oneOf" in row) return [];
    const limits = limitTexts(row);
    return limits.length === 0 ? [] : [`${row.says ?? spaced(name)}: ${limits.join(" and ")}`];
  });
}

/** The limits of an input or a step in words. */
function limitTexts(row: Limited): readonly string[] {
  const limits = (["above", "atLeast", "below", "atMost"] as const).flatMap((key) => (row[key] === undefined ? [] : [`${spaced(key)} ${String(row[key])}`]));
  return row.whole === true ? [...limits, "a whole number"] : limits;
}
