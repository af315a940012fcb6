// The built package holds its own copies of zod and decimal.js. What an app makes with its copies must work with
// ours, and what ours makes with theirs: both ways, from the built files.
import { existsSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { Decimal } from "decimal.js";
import { describe, expect, it } from "vitest";
import * as classic from "zod";
import * as z from "zod/mini";
import type * as core from "../../src/core/index.js";
import type * as joints from "../../src/joints/index.js";
import type * as schema from "../../src/schema/index.js";
import type * as shapes from "../../src/shapes/index.js";

const dist = path.resolve(import.meta.dirname, "../../dist");
const built = async <M>(topic: string): Promise<M> => (await import(/* @vite-ignore */ pathToFileURL(path.join(dist, topic, "index.js")).href)) as M;

describe.skipIf(!existsSync(path.join(dist, "core/index.js")))("an app's copies beside ours", async () => {
  const { quantity, composed, InputError } = await built<typeof core>("core");
  const { coursedFace } = await built<typeof joints>("joints");
  const { nested, quantityField, schemaOf, jsonSchemaOf } = await built<typeof schema>("schema");
  const { wallShape } = await built<typeof shapes>("shapes");
  const wall = { kind: "rectangle", width: "10 ft", height: "8 ft" } as const;

  it("our schemas stand inside the app's, of zod and of zod/mini", () => {
    const mini = z.strictObject({ name: z.string(), wall: wallShape, depth: quantityField("length", { says: "depth", above: 0 }) });
    expect(z.safeParse(mini, { name: "east", wall, depth: "1 in" }).success).toBe(true);
    expect(z.safeParse(mini, { name: "east", wall, depth: "-1 in" }).error?.issues[0]?.path).toEqual(["depth"]);
    const whole = classic.strictObject({ wall: wallShape, face: schemaOf(coursedFace) });
    expect(whole.safeParse({ wall, face: { area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" } }).success).toBe(true);
    expect(whole.safeParse({ wall: { ...wall, kind: "oval" }, face: {} }).error?.issues.map((issue) => issue.path[0])).toEqual(["wall", "face", "face", "face", "face"]);
  });

  it("the app's schemas are read by ours, with our problems", () => {
    const height = composed({
      id: "demo.height",
      title: "Height",
      reads: nested(z.strictObject({ wall: wallShape, side: z.enum(["inside", "outside"]), height: quantityField("length", { says: "height", above: 0 }) })),
      run: ({ height: read }) => ({ height: read }),
    });
    expect(height({ wall, side: "inside", height: "8 ft" }).height.toString()).toBe("8 ft");
    const tried = height.try({ wall: { ...wall, widht: "1 ft" }, side: "both", height: "8" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path: at }) => `${code} ${at.join(".")}`)).toEqual(["unknown wall.widht", "notAChoice side", "noUnit height"]);
    expect(tried.ok ? "" : tried.problems[0]?.message).toBe("wall.widht: is not known here; did you mean width?");
    expect(jsonSchemaOf(height)).toMatchObject({ type: "object", required: ["wall", "side", "height"], properties: { side: { enum: ["inside", "outside"] }, height: { title: "height" } } });
  });

  it("the app's zod makes a JSON Schema of ours", () => {
    expect(z.toJSONSchema(z.strictObject({ wall: wallShape }), { io: "input", unrepresentable: "any" })).toMatchObject({ properties: { wall: { oneOf: [{ required: ["kind", "width", "height"] }, {}, {}, {}, {}] } } });
  });

  it("decimals pass both ways", () => {
    const tenth = quantity("length", { value: new Decimal("0.1"), unit: "in" });
    expect(tenth.toString()).toBe("0.1 in");
    const ours = tenth.to("in");
    expect(Decimal.isDecimal(ours)).toBe(true);
    expect(new Decimal(ours).plus(1).toString()).toBe("1.1");
    expect(new Decimal(1).plus(ours).toString()).toBe("1.1");
  });

  it("a bad call of one topic throws the error of core", () => {
    expect(() => coursedFace({ area: "312" } as never)).toThrow(InputError);
  });
});
