// The catalogue lists everything that can be called, each under an id that says where it is; words mean one thing.
import { describe, expect, it } from "vitest";
import { basisText } from "../../src/core/basis.js";
import type { Entries } from "../../src/core/definition.js";
import { spaced } from "../../src/core/spaced.js";
import { allFound, allTopics, type Found, importSource } from "../support/modules.js";

const found = await allFound();
const catalogue = ((await importSource("catalogue.ts")) as { readonly catalogue: readonly Found["run"][] }).catalogue;

/** Letters and digits alone: `velocity-pressure-7-05` and `velocityPressure705` are one. */
const letters = (text: string): string => text.replaceAll(/[^a-z0-9]/gi, "").toLowerCase();

/** The inputs that stand in rows; nested input has its own test. */
const inputsOf = ({ definition, given }: Found["run"]): Entries => definition?.given ?? given ?? {};

it("there is something to list", () => {
  expect(found.length).toBeGreaterThan(80);
});

describe("the catalogue", () => {
  it("lists every calculation and composed function of src, and nothing twice", () => {
    expect(found.filter(({ run }) => !catalogue.includes(run)).map(({ file, name }) => `${file} ${name}`)).toEqual([]);
    expect(catalogue.filter((run, index) => catalogue.indexOf(run) !== index).map(({ id }) => id)).toEqual([]);
    expect(catalogue.filter((run) => !found.some((one) => one.run === run)).map(({ id }) => id)).toEqual([]);
  });

  it("each is shown by the index of its folder", async () => {
    const shown = new Set((await allTopics()).flatMap(({ topic, module }) => Object.entries(module).map(([name, value]) => [topic, name, value] as const)).map(([topic, name]) => `${topic} ${name}`));
    expect(found.filter(({ topic, name }) => !shown.has(`${topic} ${name}`)).map(({ file, name }) => `${file} ${name}`)).toEqual([]);
  });
});

describe("an id", () => {
  it("is there once", () => {
    const ids = found.map(({ run }) => run.id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  it("is the folder, a point, and the name in small letters with hyphens; the file is called the same", () => {
    const wrong = found.filter(({ file, topic, name, run: { id } }) => {
      const [folder = "", own = ""] = id.split(".");
      return folder !== topic || !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(own) || letters(own) !== letters(name) || file !== `${folder}/${own}.ts`;
    });
    expect(wrong.map(({ file, name, run }) => `${run.id} in ${file} as ${name}`)).toEqual([]);
  });
});

describe("words", () => {
  it("a title is a short line that begins with a capital and has no full stop", () => {
    expect(found.map(({ run }) => run.title).filter((title) => !/^[A-Z][^\n]{3,70}[^.\s]$/.test(title))).toEqual([]);
  });

  it("an input, constant or step says what it is in a few words, small, without a full stop, and has a symbol", () => {
    const rows = found.flatMap(({ run }) => Object.entries({ ...inputsOf(run), ...run.definition?.constants, ...run.definition?.steps }).map(([name, row]) => [`${run.id} ${name}`, row] as const));
    expect(rows.length).toBeGreaterThan(400);
    expect(rows.flatMap(([at, row]) => ("says" in row && !/^(?!.*\.$)[^A-Z\s].{2,150}$/.test(row.says) && !/^[A-Z]{2}|^[A-Z][a-z]?[ -]/.test(row.says) ? [`${at}: ${row.says}`] : []))).toEqual([]);
    expect(rows.flatMap(([at, row]) => (!("oneOf" in row) && !/^\p{L}+(_[\p{L}\d]+)?'?$/u.test(row.symbol) ? [`${at}: ${row.symbol}`] : []))).toEqual([]);
  });

  it("within one calculation no symbol stands for two things", () => {
    const doubled = found.flatMap(({ run: { id, definition } }) => {
      const symbols = Object.values({ ...definition?.given, ...definition?.constants, ...definition?.steps }).map(({ symbol }) => symbol);
      return symbols.filter((symbol, index) => symbols.indexOf(symbol) !== index).map((symbol) => `${id}: ${symbol}`);
    });
    expect(doubled).toEqual([]);
  });

  it("a name is no word that formulas know, and none stands twice in one calculation", () => {
    const wrong = found.flatMap(({ run: { id, definition } }) => {
      const names = [definition?.given, definition?.constants, definition?.steps].flatMap((rows) => Object.keys(rows ?? {}));
      return names.filter((name, index) => names.indexOf(name) !== index || ["pi", "min", "max", "ceil", "floor", "round", "sqrt", "ln", "log10", "exp", "sin", "asin"].includes(name)).map((name) => `${id}: ${name}`);
    });
    expect(wrong).toEqual([]);
  });

  it("a caution is a sentence", () => {
    const cautions = found.flatMap(({ run }) => run.definition?.cautions ?? []);
    expect(cautions.filter((text) => !/^[A-Z\d].{10,}[.)]$/.test(text))).toEqual([]);
  });

  it("nothing is called safe, compliant or approved", () => {
    const texts = found.flatMap(({ run }) => {
      const { definition } = run;
      const bases = Object.values({ ...inputsOf(run), ...definition?.constants, ...definition?.steps }).flatMap(({ basis }) => (basis === undefined ? [] : [basisText(basis)]));
      return [run.title, ...(definition?.cautions ?? []), ...Object.values({ ...inputsOf(run), ...definition?.steps }).map(({ says = "" }) => says), ...bases];
    });
    expect(texts.filter((text) => /\b(safe|compliant|approved)\b/i.test(text))).toEqual([]);
  });
});

/** Inputs of one name and several dimensions, and why both are right. */
const several: Readonly<Record<string, string>> = {
  steel: "the designation of a steel in the table; for the length of a screw, how thick the steel is",
};

describe("the glossary: an input of one name is one thing everywhere", () => {
  const meanings = new Map<string, Map<string, string[]>>();
  for (const { run } of found) {
    for (const [name, row] of Object.entries(inputsOf(run))) {
      const kinds = meanings.get(name) ?? new Map<string, string[]>();
      const kind = "oneOf" in row ? "choice" : row.is;
      meanings.set(name, kinds.set(kind, [...(kinds.get(kind) ?? []), run.id]));
    }
  }

  it("has one dimension", () => {
    const wrong = [...meanings].filter(([name, kinds]) => kinds.size > 1 && !Object.hasOwn(several, name));
    expect(wrong.map(([name, kinds]) => `${spaced(name)}: ${[...kinds].map(([kind, ids]) => `${kind} in ${ids.join(", ")}`).join("; ")}`)).toEqual([]);
  });

  it("and what is excepted is so still", () => {
    expect(Object.keys(several).filter((name) => (meanings.get(name)?.size ?? 0) < 2)).toEqual([]);
  });
});
