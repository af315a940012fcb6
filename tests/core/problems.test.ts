// How problems read: where, what, and which key was meant.
import { describe, expect, it } from "vitest";
import { InputError, nearest, pathText, problem, problemAt, shown } from "../../src/core/problems.js";

it.each([
  [[], ""],
  [["depth"], "depth"],
  [["layers", 2, "thickness"], "layers[2].thickness"],
  [[0, "a"], "[0].a"],
  [["a", 1, 2], "a[1][2]"],
])("the path %j is %s", (path, text) => {
  expect(pathText(path)).toBe(text);
});

describe("a problem seen from further out", () => {
  const inner = problem({ code: "noUnit", path: ["depth"], says: "depth of the joint", given: '"3"', wanted: "write a number and one of in, mm" });

  it("has the longer path, in its message too", () => {
    expect(inner.message).toBe('depth (depth of the joint): "3" has no unit; write a number and one of in, mm');
    const outer = problemAt(["walls", 0], inner);
    expect(outer.path).toEqual(["walls", 0, "depth"]);
    expect(outer.message).toBe('walls[0].depth (depth of the joint): "3" has no unit; write a number and one of in, mm');
    expect(problemAt([], inner)).toEqual(inner);
  });

  it("is frozen, and an error holds its own list", () => {
    const list = [inner];
    const error = new InputError("demo.a", list);
    list.pop();
    expect(error.problems).toEqual([inner]);
    expect([error.problems, inner, inner.path, problemAt(["a"], inner).path].every(Object.isFrozen)).toBe(true);
    expect([error instanceof Error, error.name]).toEqual([true, "InputError"]);
  });
});

it("a message tells fifty problems and how many more there are; the error holds them all", () => {
  const many = (count: number): InputError => new InputError("demo.a", Array.from({ length: count }, (_, index) => problem({ code: "missing", path: ["rows", index], given: "", wanted: "" })));
  expect(many(50).message.split("\n").at(-1)).toBe("  rows[49]: is missing");
  expect(many(1234).message.split("\n").slice(-2)).toEqual(["  rows[49]: is missing", "  and 1184 more problems"]);
  expect(many(1234).problems).toHaveLength(1234);
});

describe("the key that was meant", () => {
  const known = ["unitLength", "unitHeight", "headJoint", "bedJoint", "depth", "area"];

  it.each([
    ["unitLenght", "unitLength"],
    ["UNITLENGTH", "unitLength"],
    ["unit_length", "unitLength"],
    ["headjoints", "headJoint"],
    ["dept", "depth"],
    ["colour", undefined],
    ["", undefined],
    ["x".repeat(100_000), undefined],
  ])("%s: %s", (word, meant) => {
    expect(nearest(word, known)).toBe(meant);
  });

  it("is none where none is known", () => {
    expect(nearest("depth", [])).toBeUndefined();
  });
});

it.each([
  ["3/8", '"3/8"'],
  ["a\nb\u0007c", '"a b c"'],
  ["y".repeat(41), `"${"y".repeat(37)}…"`],
  ["y".repeat(40), `"${"y".repeat(40)}"`],
  [5, "5"],
  [Number.NaN, "NaN"],
  [10n ** 60n, "a bigint"],
  [null, "null"],
  [undefined, "undefined"],
  [[1, 2], "a list"],
  [{ secret: 1 }, "an object"],
  [() => 1, "a function"],
  [Symbol("x"), "a symbol"],
])("%o is shown as %s", (value, text) => {
  expect(shown(value)).toBe(text);
});
