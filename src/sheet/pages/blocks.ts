import { isQuantity, type Quantity } from "../../core/quantity.js";
import type { Line, Solution } from "../../core/solution.js";
import { legalName, Names } from "../workbook/defined-names.js";
import type { Book } from "./book.js";

/** One calculation as it is worked out on a sheet. */
export interface Block {
  readonly heading: string;
  readonly solution: Solution;
  /** What stands before the names of its cells, so that each is there once; empty where it is alone. */
  readonly prefix: string;
  /** The defined names of its lines, by their own. */
  readonly names: ReadonlyMap<string, string>;
}

/** The calculations that a solution is made of, in order: itself, or those that a composed function ran. */
export function leavesOf(solution: Solution): readonly Solution[] {
  return solution.steps.length > 0 ? [solution] : solution.parts.flatMap(leavesOf);
}

/** Makes the blocks of a workbook and gives out their names; the same solution stands there once. */
export function blocksOf(worked: readonly { readonly heading: string; readonly solution: Solution }[], book: Book): readonly Block[] {
  const prefixes = new Names(legalName);
  const once = [...new Map(worked.map((one) => [one.solution, one])).values()];
  return once.map(({ heading, solution }) => {
    const prefix = once.length === 1 ? "" : `${prefixes.take(shortName(solution.id))}_`;
    const names = new Map(linesOf(solution).map(({ name }) => [name, book.name(`${prefix}${name}`)]));
    for (const { name, value } of solution.steps) book.put(value, { base: names.get(name) ?? name });
    return { heading, solution, prefix, names };
  });
}

function linesOf({ given, constants, steps }: Solution): readonly Line[] {
  return [...given, ...constants, ...steps];
}

/** `joints.coursed-face` as `coursedFace`. */
function shortName(id: string): string {
  return (id.split(".").at(-1) ?? id).replace(/-+(.)/g, (_, letter: string) => letter.toUpperCase());
}

/** A given that no calculation of the workbook works out: it is a cell that one may change. */
export interface GivenCell {
  readonly value: Quantity;
  readonly name: string;
  readonly says: string;
  readonly assumed: boolean;
  /** The blocks that use it, the first one first. */
  readonly blocks: readonly Block[];
}

/** The givens of the blocks, each quantity once, without those that the workbook itself works out. */
export function givenCells(blocks: readonly Block[], book: Book): readonly GivenCell[] {
  const cells = new Map<Quantity, GivenCell>();
  for (const block of blocks) {
    for (const { value, name, says, assumed } of block.solution.given) {
      if (!isQuantity(value) || book.baseOf(value) !== undefined) continue;
      const known = cells.get(value);
      cells.set(value, known === undefined ? { value, name, says, assumed, blocks: [block] } : { ...known, blocks: [...known.blocks, block] });
    }
  }
  return [...cells.values()];
}
