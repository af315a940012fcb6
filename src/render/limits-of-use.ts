import type { AnyCallable } from "../core/callable.js";
import { spaced } from "../core/spaced.js";
import type { Definition, Entries, EntryDefinition, StepDefinition } from "../core/definition.js";
import { limitTexts } from "../core/limit-texts.js";

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
