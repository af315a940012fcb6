import type { AnyCallable } from "../../../src/core/callable.js";
import type { Entries } from "../../../src/core/definition.js";

/** The inputs of a calculation or a composed function in rows; nothing where its input is nested. */
export function entriesOf(run: AnyCallable): Entries | undefined {
  const { definition, given } = run as AnyCallable & { readonly definition?: { readonly given: Entries }; readonly given?: Entries };
  return definition?.given ?? given;
}

/** The name of a field as an id of the page. */
export function fieldId(name: string): string {
  return `in-${name}`;
}
