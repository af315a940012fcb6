// Every input anywhere in the input of a function, however deep, says what it is: a form made from the schema has its labels,
// an editor its hover texts, a problem its words.
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/catalogue.js";
import { jsonSchemaOf } from "../../src/schema/index.js";

interface Part {
  readonly title?: string;
  readonly const?: unknown;
  readonly properties?: Readonly<Record<string, Part>>;
}

/** The places without a title. The word by which one of several kinds is told needs none, and a value and its unit are one input. */
function untitled(part: unknown, path: string): readonly string[] {
  if (typeof part !== "object" || part === null) return [];
  const { properties = {} } = part as Part;
  const pair = Object.keys(properties).join() === "value,unit";
  const here = Object.entries(properties).flatMap(([name, { title, const: word }]) => (title === undefined && word === undefined && !pair ? [`${path}.${name}`] : []));
  const below = Object.entries(part).flatMap(([key, one]) => (key === "properties" ? Object.entries(one as object).flatMap(([name, property]) => untitled(property, `${path}.${name}`)) : untitled(one, path)));
  return [...here, ...below];
}

describe("the title of every input", () => {
  it.each(catalogue.map((one) => [one.id, one] as const))("%s", (_id, one) => {
    expect(untitled(jsonSchemaOf(one), "")).toEqual([]);
  });
});
