import type { Quantity } from "../../core/quantity.js";
import { compare, sum } from "../../core/quantity-arithmetic.js";
import type { Layer, ReadJob } from "../job.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";

/** One figure of the job held against a limit that the user gave. */
export interface Check {
  readonly check: string;
  readonly value: Quantity;
  readonly least?: Quantity;
  readonly most: Quantity;
  readonly finding: "below" | "within" | "over";
}

/** The checks that are asked for, in their order. */
export function checksOf(taking: Taking): readonly Check[] | undefined {
  const { checks } = taking.job;
  if (checks === undefined) return undefined;
  return [...(checks.weight === undefined ? [] : weightCheck(checks.weight, taking)), ...(checks.wetFilm === undefined ? [] : filmChecks(checks.wetFilm, taking))];
}

type Checks = NonNullable<ReadJob["checks"]>;
type Named = Extract<Layer, { readonly name: string }>;

function weightCheck({ layers, most }: NonNullable<Checks["weight"]>, { job, work }: Taking): readonly Check[] {
  const named = job.layers.filter((layer): layer is Named => "name" in layer);
  const weights = layers.flatMap((name, index) => {
    const layer = named.find((one) => one.name === name);
    if (layer === undefined) work.problem({ code: "notAChoice", path: ["checks", "weight", "layers", index], given: `"${name}"`, wanted: { kind: "choice", of: named.map((one) => one.name) } });
    const weight = layer !== undefined && "weightPerArea" in layer ? layer.weightPerArea : undefined;
    if (layer !== undefined && weight === undefined) work.problem({ code: "missing", path: ["layers", job.layers.indexOf(layer), "weightPerArea"], given: "", wanted: say("weighLayer", { layer: name }) });
    return weight ?? [];
  });
  if (weights.length !== layers.length || weights.length === 0) return [];
  const value = sum(weights);
  return [{ check: `weight of ${layers.join(", ")}`, value, most, finding: compare(value, most) > 0 ? "over" : "within" }];
}

function filmChecks({ least, most }: NonNullable<Checks["wetFilm"]>, { job, work }: Taking): readonly Check[] {
  if (compare(least, most) > 0) work.problem({ code: "tooHigh", path: ["checks", "wetFilm", "least"], given: least.toString(), wanted: say("leastOverMost", { most }) });
  return job.layers.flatMap((layer): Check[] => {
    if (layer.kind !== "barrier") return [];
    const value = layer.wetFilm;
    return [{ check: `wet film of a coat of ${layer.name}`, value, least, most, finding: compare(value, least) < 0 ? "below" : compare(value, most) > 0 ? "over" : "within" }];
  });
}
