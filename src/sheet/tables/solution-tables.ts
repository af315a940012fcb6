import { basisText } from "../../core/basis.js";
import { formulaText } from "../../core/formula.js";
import { isQuantity, type Quantity } from "../../core/quantity.js";
import type { Attempt, Line, Solution } from "../../core/solution.js";
import { unitSymbol } from "../../core/units.js";
import { costsOf, type OrderList } from "../order-list.js";
import { leavesOf } from "../pages/blocks.js";
import { numberCell, type Table, type TableCell, unitText } from "./table.js";

/**
 * An order list as a table: a line a row, each figure with its unit; prices too, where the job has them.
 *
 * @param list - what `takeOff.solve` gives
 * @example
 * ```ts
 * const list = takeOff.solve({
 *   measuredTo: "backing",
 *   elevations: [{ name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] }],
 *   layers: [{ kind: "barrier", name: "barrier", wetFilm: "25 mil", coats: 2 }],
 *   packs: { barrier: { volume: "5 gal" } },
 *   allowances: { barrier: { lossShare: "20 %" } },
 * });
 * orderTable(list).rows[0][5]; // "% of what is bought"
 * ```
 */
export function orderTable(list: OrderList): Table {
  const { lines } = list.answers;
  const costs = costsOf(list);
  const priced = new Map(costs?.lines.map((one) => [one.item, one]));
  const prices = costs === undefined ? [] : ["price of one", "price"];
  const rows = lines.map(({ item, layer, net, allowance, allowanceIs, toOrder, pack, packs }): readonly TableCell[] => {
    const added = allowance === undefined ? [undefined, ""] : [numberCell(allowance, "%"), allowanceIs === "lossShare" ? "% of what is bought" : "% on top"];
    const cost = priced.get(item);
    const figures = [numberCell(net), unitText(net), ...added, numberCell(toOrder), unitText(toOrder), pack && numberCell(pack), unitText(pack), packs && numberCell(packs)];
    return [item, layer, ...figures, ...(costs === undefined ? [] : [cost?.each, cost?.price])];
  });
  const total: readonly TableCell[][] = costs === undefined ? [] : [["total", "", ...Array.from({ length: 10 }, () => undefined), costs.total]];
  return { heads: ["item", "layer", "net", "unit", "added", "added how", "to order", "unit", "one pack", "unit", "packs", ...prices], rows: [...rows, ...total] };
}

/**
 * The worked steps of a solution as a table: givens, constants, and each step with its formula and what it stands on.
 *
 * @param solution - what `.solve` gives
 * @example
 * ```ts
 * const face = rectangle.solve({ width: "40 ft", height: "8 ft" });
 * stepsTable(face).rows[2][6]; // "width * height"
 * ```
 */
export function stepsTable(solution: Solution): Table {
  const rows = leavesOf(solution).flatMap((leaf) => {
    const row = (kind: string, line: Line, formula = ""): readonly TableCell[] => [
      leaf.title,
      kind,
      line.says,
      line.name,
      isQuantity(line.value) ? numberCell(line.value) : String(line.value),
      isQuantity(line.value) ? unitText(line.value) : "",
      formula,
      line.basis === undefined ? "" : basisText(line.basis),
    ];
    return [
      ...leaf.given.map((line) => row(line.assumed ? "assumed" : "given", line)),
      ...leaf.constants.map((line) => row("constant", line)),
      ...leaf.steps.map((step) => row("step", step, formulaText(step.formula))),
    ];
  });
  return { heads: ["calculation", "kind", "what", "name", "value", "unit", "formula", "stands on"], rows };
}

/** One of many inputs, such as a wall, with what came of it. */
export interface BatchItem {
  readonly name: string;
  readonly attempt: Attempt<unknown>;
}

/**
 * The same calculation over many inputs as a table: one a row with its answers, all in the units of the first, and what
 * is wrong with those that have none.
 *
 * @param batch - names, and what `.try` gave
 * @example
 * ```ts
 * const areas = ["40 ft", "none"].map((width, index) => ({ name: `wall ${index}`, attempt: rectangle.try({ width, height: "8 ft" }) }));
 * batchTable(areas).heads; // ["name", "area (ft2)", "perimeter (ft)", "problem"]
 * batchTable(areas).rows[0][1]; // { number: "320" }
 * ```
 */
export function batchTable(batch: readonly BatchItem[]): Table {
  const first = batch.map(({ attempt }) => answersOf(attempt)).find((answers) => answers.size > 0) ?? new Map<string, Quantity>();
  const keys = [...first].map(([key, { unit }]) => ({ key, unit }));
  const rows = batch.map(({ name, attempt }): readonly TableCell[] => {
    const answers = answersOf(attempt);
    const problems = attempt.ok ? "" : attempt.problems.map(({ message }) => message).join("; ");
    return [name, ...keys.map(({ key, unit }) => answers.has(key) ? numberCell(answers.get(key) as Quantity, unit) : undefined), problems];
  });
  return { heads: ["name", ...keys.map(({ key, unit }) => (unitSymbol(unit) === "" ? key : `${key} (${unitSymbol(unit)})`)), "problem"], rows };
}

function answersOf(attempt: Attempt<unknown>): ReadonlyMap<string, Quantity> {
  const answers = attempt.ok && typeof attempt.solution.answers === "object" ? Object.entries(attempt.solution.answers ?? {}) : [];
  return new Map(answers.filter((entry): entry is [string, Quantity] => isQuantity(entry[1])));
}
