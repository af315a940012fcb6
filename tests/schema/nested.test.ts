// Nested input: what zod finds wrong comes back as our problems, with the place, what was given and how to write it.
import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { composed } from "../../src/core/composed.js";
import type { Problem } from "../../src/core/problems.js";
import { sum } from "../../src/core/quantity-arithmetic.js";
import { nameField, partRow, quantityField, telling } from "../../src/schema/fields.js";
import { jsonSchemaOf } from "../../src/schema/json-schema.js";
import { nested } from "../../src/schema/nested.js";

const layer = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("board"), thickness: quantityField("length", { says: "thickness of the board", above: 0, atMost: "2 in" }) }),
  z.strictObject({ kind: z.literal("film"), thickness: quantityField("length", { says: "dry film", above: 0 }), coats: z.optional(quantityField("count", { says: "coats", atLeast: "1" })) }),
]);
const wall = z.strictObject({
  name: z.string(),
  height: quantityField("length", { says: "height of the wall", above: 0 }),
  side: z.optional(telling("side that is clad", z.enum(["inside", "outside"]))),
  heated: z.optional(z.boolean()),
  packs: z.optional(z.record(nameField(), z.strictObject({ sold: z.enum(["by the piece", "by the box"]) }))),
  layers: z.array(layer).check(z.minLength(1, "give one layer at least")),
});

const thickness = composed({
  id: "demo.thickness",
  title: "Thickness of a wall",
  reads: nested(wall),
  run: ({ layers }) => ({ thickness: sum(layers.map((one) => one.thickness)) }),
});

const longName = "w".repeat(81);
const good = { name: "east", height: "8 ft", layers: [{ kind: "board", thickness: "1/2 in" }, { kind: "film", thickness: "20 mil", coats: 2 }] } as const;

function problemsOf(input: unknown): readonly Problem[] {
  const tried = thickness.try(input);
  return tried.ok ? [] : tried.problems;
}

it("what is right is read by the same reader", () => {
  // 1/2 in and 20 mil are 0.52 in.
  expect(thickness(good).thickness.toString()).toBe("0.52 in");
  expect(thickness(JSON.parse(JSON.stringify(good)) as typeof good).thickness.toString()).toBe("0.52 in");
});

describe("what is wrong", () => {
  it("a share written as a number of percent is told how to write it, as in flat input", () => {
    const share = nested(z.strictObject({ waste: quantityField("ratio", { says: "waste", below: 1 }) }));
    expect(share["~standard"].validate({ waste: 10 })).toMatchObject({ issues: [{ message: 'waste (waste): is 10, but must be below 1; did you mean "10 %"?' }] });
  });

  it.each([
    ["not an object", 5, "wrongKind", "", "input: 5 cannot be read; give an object with name, height, side, heated, packs, layers"],
    ["nothing", undefined, "missing", "", "input: is missing; give an object with name, height, side, heated, packs, layers"],
    ["a missing text", { ...good, name: undefined }, "missing", "name", "name: is missing; write a text"],
    ["a missing list", { ...good, layers: undefined }, "missing", "layers", "layers: is missing; write a list"],
    ["a missing quantity", { ...good, height: undefined }, "missing", "height", "height (height of the wall): is missing; write a number and one of ft, in, m, mm, mil, yd"],
    ["a text of another kind", { ...good, name: 5 }, "wrongKind", "name", "name: 5 cannot be read; write a text"],
    ["true or false of another kind", { ...good, heated: "yes" }, "wrongKind", "heated", 'heated: "yes" cannot be read; write true or false'],
    ["a list of another kind", { ...good, layers: "none" }, "wrongKind", "layers", 'layers: "none" cannot be read; write a list'],
    ["a word that is not offered", { ...good, side: "both" }, "notAChoice", "side", 'side (side that is clad): "both" is not offered; write one of inside, outside'],
    ["a misspelt key", { ...good, sides: "inside" }, "unknown", "sides", "sides: is not known here; did you mean side?"],
    ["a key of its own", { ...good, colour: "red" }, "unknown", "colour", "colour: is not known here; there are name, height, side, heated, packs, layers"],
    ["a quantity without a unit", { ...good, height: 8 }, "noUnit", "height", "height (height of the wall): 8 has no unit; write a number and one of ft, in, m, mm, mil, yd"],
    ["a quantity that is null", { ...good, height: null }, "wrongKind", "height", "height (height of the wall): null cannot be read; write a number and one of ft, in, m, mm, mil, yd"],
    ["a check of its own", { ...good, layers: [] }, "wrongKind", "layers", "layers: a list cannot be read; give one layer at least"],
    ["a limit, far inside", { ...good, layers: [good.layers[0], { kind: "board", thickness: "3 in" }] }, "tooHigh", "layers.1.thickness", "layers[1].thickness (thickness of the board): is 3 in, but must be at most 2 in"],
    ["an unknown kind", { ...good, layers: [{ kind: "bord", thickness: "1 in" }] }, "notAChoice", "layers.0.kind", 'layers[0].kind: "bord" is not offered; did you mean board?'],
    ["no kind", { ...good, layers: [{ thickness: "1 in" }] }, "missing", "layers.0.kind", "layers[0].kind: is missing; write one of board, film"],
    ["a misspelt key far inside", { ...good, layers: [{ kind: "film", thickness: "1 mil", coat: 2 }] }, "unknown", "layers.0.coat", "layers[0].coat: is not known here; did you mean coats?"],
    ["a key that only another kind has", { ...good, layers: [{ kind: "board", thickness: "1 in", coats: 2 }] }, "unknown", "layers.0.coats", "layers[0].coats: is not known here; there are kind, thickness"],
    ["a missing word of a few", { ...good, packs: { screws: {} } }, "missing", "packs.screws.sold", "packs.screws.sold: is missing; write one of by the piece, by the box"],
    ["a name that is too long", { ...good, packs: { [longName]: { sold: "by the box" } } }, "tooLong", `packs.${longName}`, `packs.${longName}: "${"w".repeat(37)}…" is too long; write at most 80 letters`],
    ["no layer at all", { ...good, layers: [null] }, "wrongKind", "layers.0", "layers[0]: null cannot be read; write an object"],
  ] as const)("%s", (_what, input, code, path, message) => {
    const problems = problemsOf(input);
    expect(problems.map((one) => [one.code, one.path.join("."), one.message])).toEqual([[code, path, message]]);
  });

  it("comes back together", () => {
    const problems = problemsOf({ hight: "8 ft", layers: [{ kind: "film", thickness: "-1 mil", coats: 0 }, { kind: "board" }] });
    expect(problems.map(({ code, path }) => `${code} ${path.join(".")}`).sort()).toEqual([
      "missing height", "missing layers.1.thickness", "missing name", "tooLow layers.0.coats", "tooLow layers.0.thickness", "unknown hight",
    ]);
  });

  it("keys of prototypes are data, and hostile input is refused", () => {
    expect(problemsOf(JSON.parse('{ "name": "east", "height": "8 ft", "layers": [], "__proto__": { "name": 1 } }')).map(({ path }) => path.join("."))).toContain("layers");
    expect(problemsOf({ ...good, get name(): never { throw new Error("trap"); } })[0]?.code).toBe("refused");
  });
});

describe("a part that stands in two places", () => {
  const edge = z.enum(["plain", "rolled"]);
  const sheet = composed({
    id: "demo.sheet",
    title: "Edges of a sheet",
    reads: nested(z.strictObject({ left: telling("left edge", edge), right: telling("right edge", z.optional(edge)), folds: z.array(z.strictObject({ at: quantityField("length", { says: "place of the fold" }) })) })),
    run: ({ left, right, folds }, work) => {
      if (left !== right) work.problem({ code: "refused", path: ["right"], given: right ?? "", wanted: "both edges are alike" });
      folds.forEach(({ at }, index) => { work.problem({ code: "refused", path: ["folds", index, "at"], given: at.toString(), wanted: "it has no folds" }); });
      return {};
    },
  });
  const messages = (input: unknown): readonly string[] => {
    const tried = sheet.try(input);
    return tried.ok ? [] : tried.problems.map(({ message }) => message);
  };

  it("is another thing in each, and the schema it was made from says nothing", () => {
    expect(messages({ left: "sharp", right: 3, folds: [] })).toEqual(['left (left edge): "sharp" is not offered; write one of plain, rolled', "right (right edge): 3 is not offered; write one of plain, rolled"]);
    expect(jsonSchemaOf(sheet)).toMatchObject({ properties: { left: { title: "left edge", enum: ["plain", "rolled"] }, right: { title: "right edge" } } });
    expect(partRow(edge)).toBeUndefined();
  });

  it("says what it is where the function itself refuses it", () => {
    expect(messages({ left: "plain", right: "rolled", folds: [{ at: "3 in" }] })).toEqual(["right (right edge): rolled: both edges are alike", "folds[0].at (place of the fold): 3 in: it has no folds"]);
  });
});
