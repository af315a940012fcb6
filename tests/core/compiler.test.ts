// What the compiler says of a slip is fit to read, and a calculation costs it little.
import { describe, expect, it } from "vitest";
import { compile } from "../support/compile.js";

const imports = `
import { calculation } from "../../src/core/calculation.js";
import { quantity } from "../../src/core/read-quantity.js";
import { byHand, order, tank } from "../support/demo.js";
const given = { width: "4 ft", length: "3 ft", filled: "50 %", pail: "1 gal" } as const;
`;

const definition = (steps: string, inputs = `width: { is: "length", unit: "ft", symbol: "w", says: "width" }`): string =>
  `export const made = calculation({ id: "demo.made", title: "Made", given: { ${inputs} }, steps: { ${steps} } });`;

describe("the compiler", () => {
  it("has nothing to say of what is right", () => {
    expect(compile(`${imports} tank(given); ${definition(`area: { is: "area", unit: "ft2", symbol: "A", formula: "width * width", basis: byHand }`)}`).messages).toEqual([]);
  });

  it.each([
    ["a misspelt name in a formula", definition(`area: { is: "area", unit: "ft2", symbol: "A", formula: "width * widht", basis: byHand }`), [/"this name is no input, constant or step"/, /"widht"/]],
    ["operators without blanks", definition(`area: { is: "area", unit: "ft2", symbol: "A", formula: "width*width", basis: byHand }`), [/"this name is no input, constant or step"/, /"width\*width"/]],
    ["a step without a basis", definition(`area: { is: "area", unit: "ft2", symbol: "A", formula: "width * width" }`), [/'basis' is missing/]],
    ["a default without a basis", definition("", `width: { is: "length", unit: "ft", symbol: "w", says: "width", default: "1 ft" }`), [/basis/]],
    ["a volume for a length", `tank({ ...given, width: "3/4 gal" });`, [/"3\/4 gal"/]],
    ["a missing input", `tank({ width: "4 ft", length: "3 ft", filled: "50 %" });`, [/'pail' is missing/]],
    ["an input that is not known", `tank({ ...given, lenght: "3 ft" });`, [/'lenght' does not exist|did you mean to write 'length'/]],
    ["both of a pair", `order({ net: 1, waste: 0.1, lossShare: 0.1 });`, [/lossShare|waste/]],
    ["none of a pair", `order({ net: 1 });`, [/waste|lossShare/]],
    ["an area for a length", `export const a: ReturnType<typeof quantity<"area">> = quantity("length", "1 ft");`, [/'?Quantity<"length">'? is not assignable to type '?Quantity<"area">/]],
  ] as const)("of %s says what is wrong", (_what, text, wanted) => {
    const { messages } = compile(imports + text);
    expect(messages).toHaveLength(1);
    for (const part of wanted) expect(messages[0]).toMatch(part);
    // A glance: the part that says it stands in the first lines.
    expect((messages[0] ?? "").split("\n").length).toBeLessThan(15);
  });
});

describe("what a calculation costs the compiler", () => {
  /** A calculation of six inputs and three steps, like those of the topics, under names of its own. */
  const generated = (n: number): string => {
    const name = (word: string): string => `${word}${String(n)}`;
    const row = (word: string): string => `${name(word)}: { is: "length", unit: ["in", "mm"], symbol: "${word}", says: "the ${word} of number ${String(n)}", above: 0 }`;
    return `export const made${String(n)} = calculation({
      id: "demo.made-${String(n)}", title: "Made",
      given: { ${name("area")}: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area ${String(n)}", above: 0 }, ${["long", "high", "head", "bed"].map(row).join(", ")},
        ${name("depth")}: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth ${String(n)}", above: 0, default: "3/8 in", basis: byHand } },
      steps: {
        units: { is: "countPerArea", unit: ["/ft2", "/m2"], symbol: "N", formula: "1 / ((${name("long")} + ${name("head")}) * (${name("high")} + ${name("bed")}))", basis: byHand },
        share: { is: "ratio", unit: "%", symbol: "f", formula: "1 - units * ${name("long")} * ${name("high")}", basis: byHand },
        volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", formula: "${name("area")} * share * ${name("depth")}", basis: byHand },
      },
    });
    export const asked${String(n)} = made${String(n)}({ ${name("area")}: "3 ft2", ${["long", "high", "head", "bed"].map((word) => `${name(word)}: "3-5/8 in"`).join(", ")} }).volume;`;
  };
  const many = 40;
  const costOf = (count: number): ReturnType<typeof compile> => compile(imports + Array.from({ length: count }, (_, n) => generated(n)).join("\n"));

  it("is at most 2,500 type instantiations, with one call of it", () => {
    const [without, withMany] = [costOf(1), costOf(1 + many)];
    expect([...without.messages, ...withMany.messages]).toEqual([]);
    const each = (withMany.instantiations - without.instantiations) / many;
    expect(each).toBeGreaterThan(0);
    expect(each).toBeLessThanOrEqual(2500);
  });
});
