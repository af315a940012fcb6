// One call with one input, told by its seed, and what must hold whatever the input is.
import { readFileSync } from "node:fs";
import path from "node:path";
import { inspect } from "node:util";
import { catalogue } from "../../src/catalogue.js";
import { type AnyCallable, dimensions, InputError, quantity } from "../../src/core/index.js";
import { text } from "../../src/render/index.js";
import { jsonSchemaOf } from "../../src/schema/index.js";
import { takeOff } from "../../src/takeoff/index.js";
import { wrongIn } from "../support/broken-promises.js";
import { type Draw, drawFrom } from "../support/random.js";
import { drawFromSchema } from "./from-schema.js";
import { hostileNumber, hostileText, hostileValue, oddQuantity } from "./hostile.js";
import { mutated } from "./mutate.js";
import { readSpoilt } from "./sheets.js";

/** What a trial came to: whether there was an answer, and every promise that was broken. */
export interface Outcome {
  readonly what: string;
  readonly input: unknown;
  readonly answered: boolean;
  readonly broken: readonly string[];
}

/** Where the examples lie; the long run is told, since it runs from a bundle. */
const examples = path.resolve(process.env.FUZZ_EXAMPLES ?? path.join(import.meta.dirname, "../../examples"));
const jobs = ["wall.json", "entrance.json"].map((file) => JSON.parse(readFileSync(path.join(examples, file), "utf8")) as unknown) as [unknown, ...unknown[]];
const schemas = new Map(catalogue.map((one) => [one, jsonSchemaOf(one)]));
const runs = catalogue as readonly [AnyCallable, ...AnyCallable[]];

/** Works one seed out. */
export async function trial(seed: number): Promise<Outcome> {
  const draw = drawFrom(seed);
  const kind = draw.whole(1, 11);
  if (kind <= 4) return readText(draw);
  if (kind === 11) return { what: "a sheet", ...(await readSpoilt(draw)) };
  const of = kind <= 6 ? takeOff : draw.one(runs);
  return attempt(of, kind <= 6 ? mutated(draw.one(jobs), draw) : mutated(drawFromSchema(schemas.get(of) ?? {}, draw), draw));
}

function readText(draw: Draw): Outcome {
  const dimension = draw.one(Object.keys(dimensions) as [keyof typeof dimensions, ...(keyof typeof dimensions)[]]);
  const input = draw.one<() => unknown>([() => hostileText(draw), () => oddQuantity(draw, dimension), () => hostileNumber(draw), () => hostileValue(draw)])();
  try {
    const read = quantity(dimension, input as never);
    const again = quantity(dimension, read.toJSON() as never);
    // An angle in degrees is no fraction of a radian: it is written to 30 digits.
    const same = read.to().minus(again.to()).abs().lte(read.to().abs().times("1e-28")) ? [] : [`${read.toString()} written and read again is ${again.toString()}`];
    return { what: `quantity of ${dimension}`, input, answered: true, broken: [...(read.to().isFinite() ? [] : [`read is ${read.toString()}`]), ...same] };
  } catch (error) {
    const told = error instanceof InputError ? error.problems.flatMap((one) => (one.message.length > 1000 ? ["a message of more than 1000 letters"] : [])) : [];
    // What an object's own code throws goes through; only `.try` holds that back.
    const ours = error instanceof InputError || (error instanceof Error && error.message === "a stranger's own") ? [] : [`threw ${String(error)}`];
    return { what: `quantity of ${dimension}`, input, answered: false, broken: [...told, ...ours] };
  }
}

/** Calls `.try`, and looks at what comes back. */
export function attempt(of: AnyCallable, input: unknown): Outcome {
  const what = of.id;
  const outcome = (answered: boolean, ...broken: readonly string[]): Outcome => ({ what, input, answered, broken });
  try {
    const tried = of.try(input);
    if (tried.ok) {
      const told = [...wrongIn(tried.solution, "solution"), ...wrongIn(text(tried.solution, { parts: false }), "the text")];
      // A name of the input's own may say anything.
      const own = /NaN|Infinity|undefined|\[object/.test(inspect(input, { depth: 12, getters: false }));
      return outcome(true, ...told.filter((one) => !(own && one.includes(" says "))));
    }
    const { problems } = tried;
    const dumb = problems.length === 0 ? ["refused without a problem"] : [];
    // `refused` with these words is an error that the code did not foresee.
    const unforeseen = problems.filter(({ code, wanted }) => code === "refused" && wanted.startsWith("it could not be worked out") && !wanted.includes("a stranger's own")).map(({ wanted }) => wanted);
    return outcome(false, ...dumb, ...unforeseen, ...problems.flatMap(({ message }) => (message.length > 2000 ? ["a message of more than 2000 letters"] : [])));
  } catch (error) {
    return outcome(false, `threw ${String(error)}`);
  }
}
