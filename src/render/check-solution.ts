import { shown } from "../core/problems.js";
import type { Solution } from "../core/solution.js";

const lists = ["given", "constants", "steps", "parts", "assumptions", "cautions", "bases"] as const;

/** Throws where a renderer is given something that is no solution. */
export function checkSolution(solution: unknown): asserts solution is Solution {
  const what = "a renderer takes a solution, which .solve gives";
  if (typeof solution === "function" && "solve" in solution) throw new TypeError(`${what}; this is the calculation itself: call its .solve`);
  if (typeof solution !== "object" || solution === null) throw new TypeError(`${what}; this is ${shown(solution)}`);
  if ("ok" in solution) throw new TypeError(`${what}; this is what .try gives: take its .solution where it is ok`);
  const record = solution as Readonly<Record<string, unknown>>;
  const lacking = lists.filter((name) => !Array.isArray(record[name]));
  if (lacking.length === 0 && typeof record.title === "string" && "answers" in record) return;
  const keys = Object.keys(record).slice(0, 4).join(", ");
  throw new TypeError(`${what}; this has ${keys === "" ? "nothing in it" : keys}, as answers or an input have, and no ${lacking.join(", ")}`);
}
