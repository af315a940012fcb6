import { Decimal } from "decimal.js";
import { describe, expect, test } from "vitest";
import { expectPrinted, printed, roundTo, vector, vectorCallsIn, vectorRows, type Vector, vectors, vectorUse } from "./vectors.js";

const twice = (list: readonly string[]): readonly string[] => list.filter((one, at) => list.indexOf(one) !== at);

const isText = (one: unknown): boolean => typeof one === "string" && one.trim() !== "";

function faultsOf({ topic, what, tolerance, knownBy, source, inputs, expected, note, misprint }: Vector): readonly string[] {
  const { publisher, title, edition, locator } = source;
  const checks: Readonly<Record<string, boolean>> = {
    "no topic": !isText(topic),
    "no word on what it is": !isText(what),
    "no tolerance": !isText(tolerance),
    "known by none of the three ways": !["read", "secondary", "computed"].includes(knownBy),
    "no publisher": !isText(publisher),
    // A leaflet may have no edition, and a rule no title or no page; one of the two tells where it is.
    "neither title nor locator": !isText(title) && !isText(locator),
    "a field of the source is missing": ![title, edition, locator].every((one: unknown) => typeof one === "string"),
    "an input that is no text": !Object.values(inputs).every(isText),
    "nothing expected": Object.keys(expected).length === 0,
    "something expected that is no text": !Object.values(expected).every(isText),
    "an empty note": note !== undefined && !isText(note),
    "a misprint is marked, and its note begins with MISPRINT or DISAGREES": (misprint === true) !== /^(MISPRINT|DISAGREES)\b/.test(note ?? ""),
  };
  return Object.keys(checks).filter((fault) => checks[fault] === true);
}

describe("the rows of tests/vectors", () => {
  test("there are rows, and ids are unique across files", () => {
    expect(vectorRows.length).toBeGreaterThan(0);
    expect(twice(vectorRows.map(({ id }) => id))).toEqual([]);
    expect(vectorRows.map(({ id }) => id).filter((id) => !/^[A-Za-z0-9][A-Za-z0-9.-]*$/.test(id))).toEqual([]);
  });

  test("every row is whole: a topic, a source, something expected", () => {
    expect(vectorRows.map((row) => ({ id: row.id, faults: faultsOf(row) })).filter(({ faults }) => faults.length > 0)).toEqual([]);
  });

  test("a rounding case has its formula, its exact argument and its boundary", () => {
    const cases = vectorRows.filter(({ file }) => file === "rounding-cases.json");
    expect(cases.length).toBeGreaterThan(0);
    for (const { formula, exactArgument, boundary } of cases) {
      expect(formula).toMatch(/^(ceil|floor)\(/);
      expect(exactArgument).toMatch(/^\d+\/\d+$/);
      expect(boundary).toMatch(/\S/);
    }
  });
});

describe("vector and vectors", () => {
  test("a row by its id, rows by their prefix", () => {
    expect(vector("navy-brick-mortar-per-1000-half-inch").expected).toEqual({ mortar: "11.7 ft3 per 1000 brick" });
    expect(vectors("navy-brick-wall-8x14-").map(({ id }) => id)).toEqual(["navy-brick-wall-8x14-count", "navy-brick-wall-8x14-mortar"]);
  });

  test("what leads to no row throws", () => {
    expect(() => vector("navy")).toThrow('No row "navy" in tests/vectors.');
    expect(() => vectors("no-such-")).toThrow('starts with "no-such-"');
    expect(() => vectors("")).toThrow('starts with ""');
  });
});

describe("vectorUse", () => {
  test("every id and prefix in the tests, and in not-used.json, leads to a row", () => {
    expect(vectorUse().unknown).toEqual([]);
  });

  test("a row not used has a reason, and a row with a reason is not used", () => {
    const { used, unused, notUsedWithReason } = vectorUse();
    expect(used.filter((id) => Object.hasOwn(notUsedWithReason, id))).toEqual([]);
    expect(Object.entries(notUsedWithReason).filter(([, reason]) => reason.trim() === "")).toEqual([]);
    expect([...used, ...unused, ...Object.keys(notUsedWithReason)].sort()).toEqual(vectorRows.map(({ id }) => id).sort());
  });

  test("every row is used, or it is said why not", () => {
    expect(vectorUse().unused).toEqual([]);
  });

  test("takes topics with those under them, and ids by a star", () => {
    const idsOf = (...scopes: readonly string[]): readonly string[] => {
      const { used, unused, notUsedWithReason } = vectorUse(...scopes);
      return [...used, ...unused, ...Object.keys(notUsedWithReason)].sort();
    };
    const ofTopics = (keep: (topic: string) => boolean): readonly string[] => vectorRows.filter(({ topic }) => keep(topic)).map(({ id }) => id).sort();
    expect(idsOf("units")).toEqual(ofTopics((topic) => topic === "units" || topic.startsWith("units/")));
    expect(idsOf("laps", "wind/ke")).toEqual(ofTopics((topic) => topic === "laps" || topic === "wind/ke"));
    expect(idsOf("wind-xc-k*")).toEqual(["wind-xc-ke-110m", "wind-xc-kz-5m"]);
    expect(() => vectorUse("laps", "win", "ids-*")).toThrow('No row in tests/vectors is of "win", "ids-*".');
  });

  test("finds literal calls of any quotes, and none in comments", () => {
    const text = [
      'const row = vector("a-1"); vectors(\'b-\').map((one) => vector(one.id));',
      "test.each(vectors(`c-`))('', () => vector(",
      '  "a-2",',
      "));",
      '// vector("d-1")',
      '  * vectors("e-")',
      'tensor.vectorOf("f"); eigenvector("g"); vector(`h-${1}`); // vector("i")',
    ].join("\n");
    expect(vectorCallsIn(text)).toEqual({ ids: ["a-1", "a-2"], prefixes: ["b-", "c-"] });
  });
});

describe("printed", () => {
  test.each([
    ["11.7 ft3 per 1000 brick", { number: "11.7", decimals: 1, rest: "ft3 per 1000 brick" }],
    ["23.38 in2", { number: "23.38", decimals: 2, rest: "in2" }],
    ["7383.4600 Pa", { number: "7383.4600", decimals: 4, rest: "Pa" }],
    ["690", { number: "690", decimals: 0, rest: "" }],
    ["10 %", { number: "10", decimals: 0, rest: "%" }],
    ["-2.627655 degC", { number: "-2.627655", decimals: 6, rest: "degC" }],
    ["2 psf (0.10 kN/m2)", { number: "2", decimals: 0, rest: "psf (0.10 kN/m2)" }],
    ["57.2134946709451 ng/(s m^2 Pa)", { number: "57.2134946709451", decimals: 13, rest: "ng/(s m^2 Pa)" }],
    ["5.72135e-11 kg/(Pa s m2)", { number: "5.72135e-11", decimals: 16, rest: "kg/(Pa s m2)" }],
    ["1.5e3 Pa", { number: "1.5e3", decimals: 0, rest: "Pa" }],
  ])("%s", (text, parts) => {
    expect(printed(text)).toEqual(parts);
  });

  test.each([
    ["23 ft 2 in"],
    ["23 ft 2 in (7.06 m)"],
    ["1/4 in"],
    ["5-1/3 in"],
    ["0'-8\""],
    ["45 to 50 ft2 per ton"],
    ["150-300 ft2/gal"],
    ["4.62, 3.80, 3.25"],
    ["15.37 -> 16"],
    ["about 430 L"],
    ["±0.18"],
    ["16 h; 24 h in the 20-25 degF band"],
    ["1,250 ft2"],
    [""],
  ])("%s is no single number", (text) => {
    expect(printed(text)).toBeUndefined();
  });
});

describe("expectPrinted", () => {
  test("rounds half up, away from zero", () => {
    expect(roundTo("23.375", 2)).toBe("23.38");
    expect(roundTo("-23.375", 2)).toBe("-23.38");
    expect(roundTo("23.37499999999999999999999999999999999", 2)).toBe("23.37");
    expect(roundTo(0.125, 2)).toBe("0.13");
    expect(roundTo(new Decimal(9).div(1), 2)).toBe("9.00");
    expect(roundTo("-0.001", 2)).toBe("0.00");
  });

  test("passes where the rounded figure is the printed one", () => {
    expectPrinted("23.375", vector("navy-brick-face-area-half-inch").expected.area);
    expectPrinted(new Decimal("11.6536"), "11.7 ft3 per 1000 brick");
    expectPrinted(5.721349467094511e-11, "5.72135e-11 kg/(Pa s m2)");
    expectPrinted(1, "+1 degF");
  });

  test("fails where it is not, and where nothing single is printed", () => {
    expect(() => {
      expectPrinted("11.12", "11.7 ft3 per 1000 brick");
    }).toThrow(/11\.12 against "11\.7 ft3 per 1000 brick"/);
    expect(() => {
      expectPrinted(1, "23 ft 2 in");
    }).toThrow('"23 ft 2 in" is no single printed number.');
    expect(() => {
      expectPrinted(1, vector("navy-brick-face-area-half-inch").expected.volume);
    }).toThrow("Nothing is no single printed number.");
  });
});
