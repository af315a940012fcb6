import type { Quantity } from "../../core/quantity.js";
import { sum } from "../../core/quantity-arithmetic.js";
import type { Solution } from "../../core/solution.js";
import { deliveredWeight } from "../delivered-weight.js";
import { hoistTrips } from "../hoist-trips.js";
import type { OrderLine } from "../order-line.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";
import { boughtOf, refuseUnknownItem, soldAs } from "./known-item.js";

/** What one item weighs as delivered, and in how many trips it is lifted. */
export interface WeightLine {
  readonly item: string;
  readonly packs: Quantity<"count">;
  readonly packMass: Quantity<"mass">;
  readonly weight: Quantity<"mass">;
  readonly trips?: Quantity<"count">;
  readonly solution: Solution;
}

/** What is delivered and lifted. */
export interface Weights {
  readonly lines: readonly WeightLine[];
  readonly total?: Quantity<"mass">;
}

/** Weights of the items that one is given for. */
export function weightsOf(lines: readonly OrderLine[], taking: Taking): Weights | undefined {
  const { job, work } = taking;
  if (job.weights === undefined) return undefined;
  const { perPack, hoistLoad } = job.weights;
  for (const item of Object.keys(perPack)) refuseUnknownItem(item, ["weights", "perPack", item], taking);
  // Spare stock is sold as its item is: what is wrong with the one is not told again of the other.
  const wrong = new Set<string>();
  const weighed = lines.flatMap((line): WeightLine[] => {
    const name = soldAs(line);
    if (wrong.has(name)) return [];
    const packMass = Object.hasOwn(perPack, name) ? perPack[name] : undefined;
    if (packMass === undefined) return [];
    const path = ["weights", "perPack", name];
    const packs = boughtOf(line);
    if (packs === undefined) {
      work.problem({ code: "refused", path, given: "", wanted: say("noWeightFor", { item: name }) });
      return [];
    }
    const solution = work.attempt(deliveredWeight, { packs, packMass }, path);
    const lifted = hoistLoad && work.attempt(hoistTrips, { packs, packMass, hoistLoad }, path);
    if (solution === undefined || (hoistLoad !== undefined && lifted === undefined)) wrong.add(name);
    return solution === undefined ? [] : [{ item: line.item, packs, packMass, weight: solution.answers.weight, ...(lifted === undefined ? {} : { trips: lifted.answers.trips }), solution }];
  });
  const left = lines.filter((line) => boughtOf(line) !== undefined && !Object.hasOwn(perPack, soldAs(line))).map(({ item }) => item);
  if (left.length > 0) work.caution(`The weight together is without ${left.join(", ")}, for which none is given.`);
  return { lines: weighed, ...(weighed.length === 0 ? {} : { total: sum(weighed.map(({ weight }) => weight)) }) };
}
