// Problems in another language: every kind of problem is told from data, and none of the English is left in it.
import { describe, expect, it } from "vitest";
import { calculation, english, InputError, type Problem, problemText, quantity, type Wording } from "../../src/core/index.js";
import { coatingOrder } from "../../src/film/index.js";
import { spanish } from "../../src/wording/index.js";

const sum = calculation({
  id: "demo.sum",
  title: "Sum",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "length", above: "1 ft" },
    share: { is: "ratio", symbol: "s", says: "share", below: 1 },
    boxes: { is: "count", symbol: "n", says: "boxes", whole: true },
  },
  steps: { turned: { is: "ratio", symbol: "t", formula: "1 / (share - 1 / 2)", basis: { kind: "derived", says: "arithmetic" } } },
});
const good = { length: "5 ft", share: "30 %", boxes: 2 };

const problemsOf = (run: { readonly try: (input: unknown) => { readonly ok: boolean } }, input: unknown): readonly Problem[] => (run.try(input) as { readonly problems?: readonly Problem[] }).problems ?? [];

const bad: readonly unknown[] = [
  {}, null, { ...good, lenght: "5 ft" }, { ...good, colour: 3 },
  ...["5", "", "x".repeat(99), "five ft", "1,250 ft", "1e99 ft", "5 parsec", "5 gal", true, Number.NaN, "0.5 ft"].map((length) => ({ ...good, length })),
  { ...good, share: 55 }, { ...good, boxes: 1.5 }, { ...good, share: "1/2" },
];

const withoutNames = (one: Problem): Problem => ({ ...one, says: "" });

describe("wordings", () => {
  const all = [
    ...bad.flatMap((input) => problemsOf(sum, input)),
    ...problemsOf(coatingOrder, { area: "1 ft2", wetFilm: "18 mil", coats: 1, packVolume: "5 gal" }),
    ...problemsOf(coatingOrder, { area: "1 ft2", wetFilm: "18 mil", coats: 1, packVolume: "5 gal", waste: 0, lossShare: 0 }),
  ];

  it("meet every code that an input can bring about", () => {
    const met = new Set(all.map(({ code }) => code));
    const apart = ["notAChoice", "refused"];
    expect(Object.keys(english.problems).filter((code) => !met.has(code as never) && !apart.includes(code))).toEqual([]);
  });

  it("English is the message itself", () => {
    for (const one of all) expect(problemText(one, english)).toBe(one.message);
  });

  it("Spanish says each of them in other words, with what was given and what is wanted in it", () => {
    for (const one of all) {
      const text = problemText(withoutNames(one), spanish);
      expect(text).not.toBe(one.message);
      expect(text).not.toMatch(/\b(write|is|must|give|there|because|with|above|number)\b/);
      if (one.wants.kind === "units") for (const unit of one.wants.of) expect(text).toContain(unit);
    }
  });

  it.each([
    [{ ...good, length: "5 gal" }, 'length: "5 gal" es un volumen; escriba un número y una de estas unidades: ft, m, mil, in, yd, um'],
    [{ ...good, share: 55 }, 'share: es 55, pero debe ser menor que 1; ¿quiso decir "55 %"?'],
    [{ ...good, boxes: 1.5 }, "boxes: es 1.5, pero debe ser un número entero"],
    [{ ...good, share: "1/2" }, "turned: no tiene resultado, porque divide entre 0"],
    [{ ...good, lenght: "5 ft" }, "lenght: no se conoce aquí; ¿quiso decir length?"],
  ])("%j", (input, text) => {
    expect(problemsOf(sum, input).map((one) => problemText(withoutNames(one), spanish))).toEqual([text]);
  });

  it("an app brings its own, and what it says is what is read", () => {
    const shouting: Wording = { ...english, problems: { ...english.problems, noUnit: (given) => `NO UNIT IN ${given}` } };
    const [one] = problemsOf(sum, { ...good, length: "5" });
    expect(one === undefined ? "" : problemText(one, shouting)).toBe('length (length): NO UNIT IN "5"');
  });

  it("what is wanted cannot be changed", () => {
    expect(all.every(({ wants }) => Object.isFrozen(wants))).toBe(true);
    expect(() => quantity("length", "5 gal" as never)).toThrow(InputError);
    expect(problemsOf(sum, { ...good, length: "5 gal" })[0]).toMatchObject({ code: "wrongDimension", given: '"5 gal"', found: "volume", wants: { kind: "units" } });
  });
});
