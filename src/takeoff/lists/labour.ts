import { nearest, type Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { isNought, sum } from "../../core/quantity-arithmetic.js";
import { quantity, readQuantity } from "../../core/read-quantity.js";
import type { Solution } from "../../core/solution.js";
import { areaLabour } from "../../planning/area-labour.js";
import { countLabour } from "../../planning/count-labour.js";
import { lengthLabour } from "../../planning/length-labour.js";
import { volumeLabour } from "../../planning/volume-labour.js";
import type { FaceMeasures } from "../face-measures.js";
import type { OrderLine } from "../order-line.js";
import { paidHours } from "../paid-hours.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";

/** Hours of one task. */
export interface LabourLine {
  readonly task: string;
  readonly of: string;
  readonly amount: Quantity;
  readonly toolHours: Quantity<"time">;
  readonly paidHours: Quantity<"time">;
  /** How the hours at the tool are worked out. */
  readonly solution: Solution;
}

/** Hours of all tasks. */
export interface Labour {
  readonly lines: readonly LabourLine[];
  readonly hours?: { readonly toolHours: Quantity<"time">; readonly paidHours: Quantity<"time"> };
}

/** What a task may be measured by besides the items of the list. */
const faces = { "stone face": "face", "flat units face": "flats", "corner edges": "cornerEdges", backing: "backing" } as const satisfies Readonly<Record<string, keyof FaceMeasures>>;

/** Hours by the user's own rates, for the net of an item or for a face. */
export function labourOf(lines: readonly OrderLine[], measured: FaceMeasures, taking: Taking): Labour | undefined {
  const { job: { labour }, work } = taking;
  if (labour === undefined) return undefined;
  const done = labour.tasks.flatMap(({ name, of, hours, per, factor }, index): LabourLine[] => {
    const path = ["labour", "tasks", index];
    const amount = amountOf(of, lines, measured, [...path, "of"], taking);
    if (amount === undefined) return [];
    const each = readQuantity(amount.dimension, per, { path: [...path, "per"], says: "amount that the hours are for" });
    if ("code" in each) {
      work.problem(each);
      return [];
    }
    if (isNought(each)) {
      work.problem({ code: "tooLow", path: [...path, "per"], given: each.toString(), wanted: say("aboveNought") });
      return [];
    }
    const solution = toolTimeOf(amount, { per: each, hours, factor }, path, taking);
    const paid = solution && work.attempt(paidHours, { toolHours: solution.answers.labour, efficiency: labour.efficiency }, path);
    return solution === undefined || paid === undefined ? [] : [{ task: name, of, amount, toolHours: solution.answers.labour, paidHours: paid.answers.paidHours, solution }];
  });
  if (done.length === 0) return { lines: [] };
  return { lines: done, hours: { toolHours: sum(done.map(({ toolHours }) => toolHours)), paidHours: sum(done.map(({ paidHours }) => paidHours)) } };
}

function amountOf(of: string, lines: readonly OrderLine[], measured: FaceMeasures, path: Path, { items, shared, work }: Taking): Quantity | undefined {
  const line = lines.find(({ item }) => item === of);
  if (line !== undefined) return line.net;
  if (Object.hasOwn(faces, of)) return measured[faces[of as keyof typeof faces]];
  if (shared || items().includes(of)) return undefined;
  const known = [...Object.keys(faces), ...items()];
  const near = nearest(of, known);
  work.problem({ code: "notAChoice", path, given: `"${of}"`, wanted: near === undefined ? { kind: "choice", of: known } : { kind: "near", key: near } });
  return undefined;
}

interface Rate {
  readonly per: Quantity;
  readonly hours: Quantity<"time">;
  readonly factor: Quantity<"ratio"> | undefined;
}

/** Hours of one person at the tool; what is on a list or a face is an area, a length, a volume or a number of pieces. */
function toolTimeOf(amount: Quantity, { per, hours, factor = quantity("ratio", 1) }: Rate, path: Path, { work }: Taking): Solution<{ readonly labour: Quantity<"time"> }> | undefined {
  switch (amount.dimension) {
    case "area":
      return work.attempt(areaLabour, { area: amount as Quantity<"area">, perArea: per as Quantity<"area">, hours, factor }, path);
    case "length":
      return work.attempt(lengthLabour, { length: amount as Quantity<"length">, perLength: per as Quantity<"length">, hours, factor }, path);
    case "volume":
      return work.attempt(volumeLabour, { volume: amount as Quantity<"volume">, perVolume: per as Quantity<"volume">, hours, factor }, path);
    default:
      return work.attempt(countLabour, { count: amount as Quantity<"count">, perCount: per as Quantity<"count">, hours, factor }, path);
  }
}
