import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { packages } from "virtual:packages";
import { catalogue } from "../../../src/catalogue.js";
import type { AnyCallable } from "../../../src/core/callable.js";
import type { Definition } from "../../../src/core/definition.js";
import type { Solution } from "../../../src/core/solution.js";
import { commentExamples } from "../../../tests/support/examples.js";
import { exampleOf, type RunExample } from "./example.js";
import { checksOf, type Checks } from "./checks.js";

/** A calculation or a composed function of the catalogue, with all that its page tells. */
export interface Listed {
  readonly run: AnyCallable;
  /** Where it has formulas. */
  readonly definition?: Definition;
  readonly id: string;
  readonly title: string;
  readonly topic: string;
  /** The name that a user imports, and from where. */
  readonly name: string;
  readonly entry: string;
  /** What its doc comment says, without the example. */
  readonly says: string;
  readonly example: RunExample;
  /** The example's input worked out. */
  readonly solution: Solution;
  readonly checks: Checks;
  /** The page, from the top of the site. */
  readonly page: string;
}

const src = path.resolve(import.meta.dirname, "../../../src");

/** Everything in the catalogue, by topic and title. */
export async function allListed(): Promise<readonly Listed[]> {
  const listed = await Promise.all(catalogue.map((run) => listedOf(run)));
  return listed.sort((one, other) => one.topic.localeCompare(other.topic) || one.title.localeCompare(other.title));
}

async function listedOf(run: AnyCallable): Promise<Listed> {
  const [topic = "", file = ""] = run.id.split(".");
  const entry = `settingbed/${topic}`;
  const [name] = Object.entries(packages[entry] ?? {}).find(([, value]) => value === run) ?? [];
  if (name === undefined) throw new Error(`${run.id} is not exported from ${entry}`);
  const comment = commentOf(topic, name);
  const [code] = commentExamples(run.id, comment);
  if (code === undefined) throw new Error(`${run.id} has no example`);
  const example = await exampleOf(code, run, name);
  const tried = run.try(example.input);
  if (!tried.ok) throw new Error(`the example of ${run.id} has no answer: ${tried.problems.map(({ message }) => message).join("; ")}`);
  const { definition } = run as { readonly definition?: Definition };
  return {
    run,
    ...(definition === undefined ? {} : { definition }),
    id: run.id,
    title: run.title,
    topic,
    name,
    entry,
    says: proseOf(comment),
    example,
    solution: tried.solution,
    checks: checksOf(topic, file, name),
    page: `handbook/${topic}/${file}.html`,
  };
}

/** The doc comment of an export, looked for in the files of its topic. */
function commentOf(topic: string, name: string): string {
  const pattern = new RegExp(String.raw`/\*\*(?:(?!\*/)[\s\S])*\*/\s*export const ${name}\b`);
  const folder = path.join(src, topic);
  for (const file of readdirSync(folder).filter((one) => one.endsWith(".ts"))) {
    const [found] = pattern.exec(readFileSync(path.join(folder, file), "utf8")) ?? [];
    if (found !== undefined) return found.slice(0, found.indexOf("*/") + 2);
  }
  throw new Error(`${topic}/${name} has no doc comment`);
}

function proseOf(comment: string): string {
  const plain = comment.replace(/^\/\*\*|\*\/$/g, "").replace(/^[ \t]*\*(?: |$)/gm, "");
  const [prose = ""] = plain.split(/^\s*@/m);
  return prose.replaceAll(/\{@link (\w+)\}/g, "`$1`").replaceAll(/\s+/g, " ").trim();
}
