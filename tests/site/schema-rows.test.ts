// The tables of a handbook page that list each place of nested input and of answers, beside what the examples give and answer:
// every place of those stands in them.
import { beforeAll, expect, it } from "vitest";
import { schemaRows } from "../../docs/site/generator/schema-rows.js";
import { answersSchemaOf } from "../../src/answers/index.js";
import { isQuantity } from "../../src/core/index.js";
import { type JsonSchema, jsonSchemaOf } from "../../src/schema/index.js";
import { takeOff } from "../../src/takeoff/index.js";
import { type RecordedCall, recordedCalls } from "../support/recorded-calls.js";

let calls: readonly RecordedCall[] = [];
beforeAll(async () => {
  calls = (await recordedCalls()).filter(({ of }) => !("definition" in of));
});

/** The places of a value, as a table writes them; a quantity and a solution are one place each. */
function placesIn(value: unknown, path = ""): readonly string[] {
  const own = path === "" ? [] : [path];
  if (typeof value !== "object" || value === null || isQuantity(value) || "unit" in value || "bases" in value) return own;
  if (Array.isArray(value)) return [...own, ...value.flatMap((one) => placesIn(one, `${path}[]`))];
  return [...own, ...Object.entries(value).flatMap(([name, one]) => (one === undefined ? [] : placesIn(one, path === "" ? name : `${path}.${name}`)))];
}

/** Those of the places that no row has: a list of so many has its rows by number, an object by name has one for all names. */
function missingIn(schema: JsonSchema, places: readonly string[]): readonly string[] {
  const paths = schemaRows(schema).map(({ path }) => path.replaceAll(/\[\d+\]/g, "[]"));
  const patterns = paths.map((path) => new RegExp(`^${path.split(".*").map((part) => part.replaceAll(/[.[\]]/g, String.raw`\$&`)).join(String.raw`\..+`)}$`));
  return places.filter((place) => !patterns.some((pattern) => pattern.test(place)));
}

it("every place of every nested example stands in the table of what is taken", () => {
  const nested = calls.filter(({ of }) => "reads" in of);
  expect(nested.length).toBeGreaterThan(40);
  for (const { of, input } of nested) expect([of.id, missingIn(jsonSchemaOf(of), placesIn(input))]).toEqual([of.id, []]);
});

it("every place of every answer stands in the table of what is answered", () => {
  for (const { of, answers } of calls) expect([of.id, missingIn(answersSchemaOf(of), placesIn(answers))]).toEqual([of.id, []]);
});

it("a row tells what the place is, its units and limits or the words to choose from, and whether it must be there", () => {
  const row = (path: string): unknown => schemaRows(jsonSchemaOf(takeOff)).find((one) => one.path === path);
  expect(row("elevations[].outsideCorners[].otherFace")).toEqual({ path: "elevations[].outsideCorners[].otherFace", titles: ["whether the face round the corner is an elevation of this job"], kinds: ["elevation, unclad"], isNeeded: true });
  expect(row("elevations[].shape.width")).toMatchObject({ kinds: ["length in ft, in, m, mm, mil, yd, um, cm; above 0"], isNeeded: false });
  expect(row("elevations[].shape.kind")).toMatchObject({ isNeeded: true });
});
