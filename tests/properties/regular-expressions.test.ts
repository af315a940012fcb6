// No regular expression of src lets a text of a stranger take long. patterns.json says of each that recheck has proved
// it linear (tests/properties/prove-patterns.mjs), or how long a text can reach it: that is timed here with the attack
// that recheck found.
import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { patternsOfSource } from "./patterns.mjs";

interface Bounded {
  readonly longest: number;
  readonly because: string;
  /** What a text that takes long begins with, repeats, and ends with. */
  readonly attack: readonly [head: string, again: string, tail: string];
}

interface Known {
  readonly linear: readonly string[];
  readonly bounded: Readonly<Record<string, Bounded>>;
  /** Not linear, reached by texts of any length, and to be mended: with where, and why. */
  readonly open: Readonly<Record<string, string>>;
}

const known = JSON.parse(readFileSync(path.join(import.meta.dirname, "patterns.json"), "utf8")) as Known;
const { patterns, made } = patternsOfSource();
const written = new Set(patterns.map(({ text }) => text));

it("each is proved, bounded, or known to be open; run tests/properties/prove-patterns.mjs after a new one", () => {
  expect(patterns.length).toBeGreaterThan(100);
  const all = new Set([...known.linear, ...Object.keys(known.bounded), ...Object.keys(known.open)]);
  expect(patterns.filter(({ text }) => !all.has(text)).map(({ file, line, text }) => `${file}:${String(line)} ${text}`)).toEqual([]);
});

it("none is listed that is no longer there", () => {
  expect([...Object.keys(known.bounded), ...Object.keys(known.open)].filter((text) => !written.has(text))).toEqual([]);
});

it("none is made of a text as it runs, but for pieces of a given length", () => {
  expect(made.filter((place) => !place.includes("new RegExp(`[^]{1,${String(most)}}`"))).toEqual([]);
});

describe.each(Object.entries(known.bounded))("%s", (text, { longest, because, attack: [head, again, tail] }) => {
  it(`takes no time with ${String(longest)} letters: ${because}`, () => {
    const { source, flags } = patterns.find((one) => one.text === text) as { readonly source: string; readonly flags: string };
    const letters = `${head}${again.repeat(Math.floor(longest / again.length))}`.slice(0, longest) + tail;
    const before = process.cpuUsage();
    letters.replace(new RegExp(source, flags), "");
    expect(process.cpuUsage(before).user).toBeLessThan(200_000);
  });
});
