import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { type Vector, vectorCallsIn, vectorRows } from "../../../tests/support/vectors.js";

/** What the answers of a calculation are checked against. */
export interface Checks {
  /** `published`: figures printed in a source outside; `derived by hand`: worked out in the test, or by a program of others. */
  readonly state: "published" | "derived by hand" | "none yet";
  /** The check values, as printed. */
  readonly rows: readonly Vector[];
}

const tests = path.resolve(import.meta.dirname, "../../../tests");

/** A comment or the title of a test that works a figure out: `// 1540 x 144 x 0.005 / 231`, `it("1540 ft2 at 2 x 20 mil is 38.4 gal"`. */
const worked = /(?:\/\/|\bit\(["'`]).*?(?:\d[^"]*? [-+x*/] [^"]*?\d|\bby hand\b|\bin the head\b)/;

/** The tests of a topic: their file, and the text of each test in it. */
const readTests = new Map<string, readonly ReadTest[]>();

interface ReadTest {
  readonly file: string;
  readonly text: string;
  readonly cases: readonly string[];
}

function testsOf(topic: string): readonly ReadTest[] {
  const known = readTests.get(topic);
  if (known !== undefined) return known;
  const files = readdirSync(path.join(tests, topic)).filter((file) => file.endsWith(".test.ts"));
  const read = files.map((file) => {
    const text = readFileSync(path.join(tests, topic, file), "utf8");
    return { file: file.slice(0, -".test.ts".length), text, cases: text.split(/^(?= *it[(.])/m).slice(1) };
  });
  readTests.set(topic, read);
  return read;
}

/** The check values that the tests of a calculation ask for: its own test, and those cases of others that call it. */
export function checksOf(topic: string, file: string, name: string): Checks {
  const call = new RegExp(String.raw`\b${name}(\(|\.(try|solve)\b)`);
  const texts = testsOf(topic).flatMap((test) => (test.file === file ? [test.text] : test.cases.filter((text) => call.test(text))));
  const calls = texts.map(vectorCallsIn);
  const rows = vectorRows.filter(({ id }) => calls.some(({ ids, prefixes }) => ids.includes(id) || prefixes.some((prefix) => id.startsWith(prefix))));
  const isPublished = rows.some(({ source, knownBy, misprint }) => source.publisher !== "derived by hand" && knownBy !== "computed" && misprint !== true);
  const isDerived = rows.length > 0 || texts.some((text) => text.split("\n").some((line) => worked.test(line)));
  return { state: isPublished ? "published" : isDerived ? "derived by hand" : "none yet", rows };
}
