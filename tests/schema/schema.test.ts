import { describe, expect, it } from "vitest";
import type * as z from "zod/mini";
import { coatingOrder } from "../../src/film/index.js";
import { coursedFace, toolingLoss } from "../../src/joints/index.js";
import { jsonSchemaOf, schemaOf } from "../../src/schema/index.js";
import { takeOff } from "../../src/takeoff/index.js";
import { catalogue } from "../../src/catalogue.js";

const face = { area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" } as const;

/** The messages of our own problems in what zod found. */
function problemsIn(result: z.core.util.SafeParseResult<unknown>): readonly string[] {
  if (result.success) return [];
  return result.error.issues.map((issue) => ("params" in issue ? String((issue.params as { problem?: { code: string } }).problem?.code) : issue.code));
}

describe("the zod schema of a calculation", () => {
  it("reads what the calculation reads, and the calculation takes what it gives", () => {
    const read = schemaOf(coursedFace).safeParse(face);
    expect(read.success && coursedFace(read.data as never).volume.to("ft3").toString()).toBe(coursedFace(face).volume.to("ft3").toString());
  });

  it("refuses a missing unit, an unknown key, and both or none of a pair", () => {
    expect([...problemsIn(schemaOf(coursedFace).safeParse({ ...face, area: "312", hight: 1 }))].sort()).toEqual(["noUnit", "unrecognized_keys"]);
    const coat = { area: "100 ft2", wetFilm: "20 mil", coats: 2, packVolume: "5 gal" };
    expect(problemsIn(schemaOf(coatingOrder).safeParse(coat))).toEqual(["either"]);
    expect(problemsIn(schemaOf(coatingOrder).safeParse({ ...coat, waste: "5 %", lossShare: "5 %" }))).toEqual(["either"]);
    expect(schemaOf(coatingOrder).safeParse({ ...coat, waste: "5 %" }).success).toBe(true);
  });

  it("knows the choices of a composed function, and nested input", () => {
    expect(schemaOf(toolingLoss).safeParse({ profile: "flush", width: "3/8 in", depth: "1 in" }).success).toBe(true);
    expect(schemaOf(toolingLoss).safeParse({ profile: "wavy", width: "3/8 in", depth: "1 in" }).success).toBe(false);
    expect(schemaOf(takeOff).safeParse({}).success).toBe(false);
  });

  it("refuses what is neither", () => {
    expect(() => schemaOf({} as never)).toThrow(TypeError);
    expect(() => jsonSchemaOf((() => 1) as never)).toThrow(TypeError);
  });
});

describe("the JSON Schema", () => {
  it("of every calculation and composed function names the draft, forbids unknown keys and is plain JSON", () => {
    expect(catalogue.length).toBeGreaterThan(100);
    for (const one of catalogue) {
      const schema = jsonSchemaOf(one);
      expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
      expect(schema.title).toBe(one.title);
      expect(JSON.parse(JSON.stringify(schema))).toEqual(schema);
    }
  });

  it("tells units, limits, defaults and what they stand on", () => {
    const { properties, required } = jsonSchemaOf(coursedFace) as { properties: Record<string, Record<string, unknown>>; required: string[] };
    expect(required).toEqual(["area", "unitLength", "unitHeight", "depth"]);
    expect(properties.headJoint).toMatchObject({ title: "width of the upright joints", default: "3/8 in" });
    expect(properties.headJoint?.description).toMatch(/^length in in, mm, .*; at least 0; default: common practice/);
  });

  it("asks for exactly one of a pair", () => {
    expect(jsonSchemaOf(coatingOrder).allOf).toEqual([{ oneOf: [{ required: ["waste"] }, { required: ["lossShare"] }] }]);
  });
});
