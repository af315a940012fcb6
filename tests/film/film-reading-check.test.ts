import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { filmReadingCheck } from "../../src/film/film-reading-check.js";
import { expectPrinted, vector, type Vector } from "../support/vectors.js";

type Job = Parameters<typeof filmReadingCheck>[0];

const problemsOf = (job: unknown): readonly string[] => {
  const tried = filmReadingCheck.try(job);
  return tried.ok ? [] : tried.problems.map(({ code, path }) => `${code} ${path.join(".")}`);
};

/** Spots of three readings alike, so that each has the mean that is named. */
const spotsOf = (...means: readonly string[]): Job["spots"] => means.map((mean) => ({ readings: [mean, mean, mean] }));

/** `"7.0, 8.4, 9.6 mil"` as three texts with their unit. */
const meansOf = (text: string | undefined): readonly string[] => (text ?? "").replace(" mil", "").split(", ").map((mean) => `${mean} mil`);

/** `"8-12 mil"` as its two ends. */
const endsOf = (text: string | undefined): readonly [string, string] => {
  const [, low = "", high = ""] = /^([\d.]+)-([\d.]+) mil$/.exec(text ?? "") ?? [];
  return [`${low} mil`, `${high} mil`];
};

describe("filmReadingCheck of dry film by the means of spots", () => {
  const cases: readonly (readonly [Vector, Job["rule"]])[] = [
    [vector("acc-pa2-pass"), "SSPC-PA 2 level 3"],
    [vector("acc-pa2-lowspot"), "SSPC-PA 2 level 3"],
    [vector("acc-pa9-pass"), "SSPC-PA 9 level 3"],
    [vector("acc-l1-fail"), "SSPC-PA 2 level 1"],
  ];
  it.each(cases.map(([row, rule]) => ({ row, rule, id: row.id })))("$id by $rule", ({ row, rule }) => {
    const [least, most] = endsOf(row.inputs.spec);
    const check = filmReadingCheck({ film: "dry", rule, least, most, spots: spotsOf(...meansOf(row.inputs.spots)) });
    expectPrinted(check.mean?.to("mil") ?? "", row.expected.mean);
    expect([check.allowedLeast.toString(), check.allowedMost?.toString()]).toEqual(endsOf(row.expected.spot_limits));
    expect(String(check.passes)).toBe(row.expected.accept);
  });

  it("names the spot that fails, and says to step out from it as SSPC-PA 2 has it, section 8", () => {
    const row = vector("pa2-nonconf");
    expect(row.note).toBe("no 80/120 allowance applies to these spots");
    const [, ...rest] = spotsOf("6.3 mil", "9.5 mil", "9.1 mil", "9.8 mil", "9.6 mil");
    const check = filmReadingCheck({ film: "dry", rule: "SSPC-PA 2 level 3", least: "8 mil", most: "12 mil", spots: [{ name: "E3, 4 ft up", readings: ["6.3 mil", "6.2 mil", "6.4 mil"] }, ...rest] });
    expect(check.fails).toEqual([{ where: "E3, 4 ft up", is: "under", says: "E3, 4 ft up: its mean of 6.3 mil is under 6.4 mil" }]);
    expect(check.next[0]).toContain(row.inputs.step);
    expect(check.next[0]).toContain("in each direction until two in a row pass");
    expect(check.next[0]).toContain("no allowance");
  });

  it("passes a spot at exactly 80 % or 120 %, and none a hair beyond", () => {
    const at = (low: string, high: string): readonly string[] =>
      filmReadingCheck({ film: "dry", rule: "SSPC-PA 2 level 3", least: "8 mil", most: "12 mil", spots: spotsOf(low, high, "10 mil", "10 mil", "10 mil") }).fails.map(({ where, is }) => `${where} ${is}`);
    expect(at("6.4 mil", "14.4 mil")).toEqual([]);
    expect(at("6.3999 mil", "14.4 mil")).toEqual(["spot 1 under"]);
    expect(at("6.4 mil", "14.4001 mil")).toEqual(["spot 2 over"]);
  });

  it("gives the area mean no allowance, either way", () => {
    // Every spot within 6.4 to 14.4 mil; means (5 x 7.9) / 5 and (5 x 12.1) / 5
    const check = (mean: string): ReturnType<typeof filmReadingCheck> => filmReadingCheck({ film: "dry", rule: "SSPC-PA 2 level 3", least: "8 mil", most: "12 mil", spots: spotsOf(mean, mean, mean, mean, mean) });
    expect(check("7.9 mil").fails.map(({ where, is }) => `${where} ${is}`)).toEqual(["the area under"]);
    expect(check("12.1 mil").fails.map(({ where, is }) => `${where} ${is}`)).toEqual(["the area over"]);
    expect(check("8 mil").passes && check("12 mil").passes).toBe(true);
    expect(check("7.9 mil").next.join(" ")).not.toContain("each direction");
  });

  it("judges a spot by its mean, not by one reading", () => {
    const spots = [{ readings: ["4 mil", "10 mil", "10 mil"] }, ...(spotsOf("9 mil", "9 mil", "9 mil", "9 mil"))];
    // (4 + 10 + 10) / 3 = 8 mil
    const check = filmReadingCheck({ film: "dry", rule: "SSPC-PA 2 level 3", least: "8 mil", spots });
    expect(check.passes).toBe(true);
    expect(check.spots[0]?.mean?.toString()).toBe("8 mil");
  });

  it("has no most by SSPC-PA 9 level 4, and says so where none is specified", () => {
    const spots = spotsOf("30 mil", "40 mil", "50 mil", "60 mil", "400 mil");
    expect(filmReadingCheck({ film: "dry", rule: "SSPC-PA 9 level 4", least: "40 mil", spots }).passes).toBe(true);
    expect(problemsOf({ film: "dry", rule: "SSPC-PA 9 level 4", least: "40 mil", most: "60 mil", spots })).toEqual(["refused most"]);
    expect(filmReadingCheck({ film: "dry", rule: "SSPC-PA 9 level 1", least: "40 mil", spots }).fails.map(({ where }) => where)).toEqual(["spot 1"]);
    expect(filmReadingCheck.solve({ film: "dry", rule: "SSPC-PA 9 level 3", least: "40 mil", spots }).assumptions).toEqual(["no most is specified, so none is checked"]);
  });

  it("names its source, and who quotes it", () => {
    const { bases, cautions } = filmReadingCheck.solve({ film: "dry", rule: "SSPC-PA 2 level 3", least: "8 mil", spots: spotsOf("9 mil", "9 mil", "9 mil", "9 mil", "9 mil") });
    expect(bases.map((basis) => (basis.kind === "published" ? basis.locator : basis.kind))).toEqual(expect.arrayContaining(["level 3", "section 8"]));
    expect(cautions.join(" ")).toContain("nearer rule for boards");
  });
});

describe("filmReadingCheck of dry film by every reading", () => {
  const nominal = { film: "dry", least: "10 mil" } as const;
  const readings = (...all: readonly string[]): Job["spots"] => [{ readings: all.map((one) => `${one} mil`) }];

  it("ISO 19840: fewer than 20 % below nominal, none below 80 %, the mean at least nominal (as quoted by Corrosionpedia)", () => {
    const fails = (...all: readonly string[]): readonly string[] => filmReadingCheck({ ...nominal, rule: "ISO 19840", spots: readings(...all) }).fails.map(({ says }) => says);
    expect(fails("8", "12", "12", "12", "12", "12")).toEqual([]);
    expect(fails("8", "12", "12", "12", "12")).toEqual(["the readings: 20 % are under 10 mil; fewer than 20 % may be"]);
    expect(fails("7.9", "12", "12", "12", "12", "12")).toEqual(["spot 1: a reading is under 8 mil"]);
    expect(fails("8", "10", "10", "10", "10", "11.9")).toEqual(["the readings: their mean of 9.983333333 mil is under 10 mil"]);
  });

  it("IMO PSPC: 90 % or more at nominal, none below 90 % (as quoted by Corrosionpedia)", () => {
    const fails = (...all: readonly string[]): readonly string[] => filmReadingCheck({ ...nominal, rule: "IMO PSPC", spots: readings(...all) }).fails.map(({ says }) => says);
    const nine = Array.from({ length: 9 }, () => "10");
    expect(fails("9", ...nine)).toEqual([]);
    expect(fails("9", ...nine.slice(1))).toEqual(["the readings: 11.11111111 % are under 10 mil; no more than 10 % may be"]);
    expect(fails("8.99", ...nine)).toEqual(["spot 1: a reading is under 9 mil"]);
  });

  it("refuses a most, which these rules are not on file with", () => {
    expect(problemsOf({ ...nominal, rule: "ISO 19840", most: "15 mil", spots: readings("12") })).toEqual(["refused most"]);
  });
});

describe("filmReadingCheck of wet film", () => {
  const coat = { film: "wet", rule: "band", least: "15 mil", most: "22 mil" } as const;

  it("judges every reading by the band of one coat (common practice: 15 to 22 mil wet)", () => {
    const check = filmReadingCheck({ ...coat, spots: [{ readings: ["15 mil", "22 mil"] }, { readings: ["14.9 mil", "22.1 mil", "18 mil"] }] });
    expect(check.fails.map(({ where, is }) => `${where} ${is}`)).toEqual(["spot 2 under", "spot 2 over"]);
    expect(check.passes).toBe(false);
    expect(check.next).toHaveLength(2);
    expect(filmReadingCheck({ ...coat, spots: [{ readings: ["15 mil", "22 mil"] }] })).toMatchObject({ passes: true, fails: [], next: [] });
  });

  it("judges teeth at both ends of their bracket", () => {
    const teeth = (lastWetTooth: string, firstDryTooth?: string): readonly string[] =>
      filmReadingCheck({ ...coat, spots: [{ teeth: [firstDryTooth === undefined ? { lastWetTooth } : { lastWetTooth, firstDryTooth }] }] }).fails.map(({ says }) => says);
    expect(teeth("16 mil", "18 mil")).toEqual([]);
    expect(teeth("14 mil", "16 mil")).toEqual(["spot 1: it may be as thin as 14 mil, under 15 mil"]);
    expect(teeth("20 mil", "24 mil")).toEqual(["spot 1: it may be as thick as 24 mil, over 22 mil"]);
    expect(teeth("20 mil")).toEqual(["spot 1: the highest tooth is wet, so it cannot be told whether it is over 22 mil"]);
    expect(teeth("24 mil")).toEqual(["spot 1: it is at least 24 mil, over 22 mil"]);
  });

  it("refuses every rule that allows for a dry film", () => {
    for (const rule of ["SSPC-PA 2 level 1", "SSPC-PA 2 level 3", "SSPC-PA 9 level 3", "ISO 19840", "IMO PSPC"]) {
      expect(problemsOf({ ...coat, rule, spots: [{ readings: ["18 mil"] }] })).toEqual(["refused rule"]);
      expect(problemsOf({ ...coat, rule, spots: [{ teeth: [{ lastWetTooth: "18 mil" }] }] })).toEqual(["refused rule"]);
    }
  });

  it("says that it is the dry film that counts", () => {
    expect(filmReadingCheck.solve({ ...coat, spots: [{ readings: ["18 mil"] }] }).cautions.join(" ")).toContain("what is accepted is the dry film");
  });
});

describe("filmReadingCheck refuses", () => {
  const job = { film: "dry", rule: "SSPC-PA 2 level 3", least: "8 mil", most: "12 mil", spots: spotsOf("9 mil", "9 mil", "9 mil", "9 mil", "9 mil") } as const;

  it("to guess whether a film is wet or dry, or by which rule", () => {
    expect(problemsOf({ ...job, film: undefined })).toEqual(["missing film"]);
    expect(problemsOf({ ...job, rule: undefined })).toEqual(["missing rule"]);
    expect(problemsOf({ ...job, rule: "SSPC-PA 2" })).toEqual(["notAChoice rule"]);
  });

  it("more or fewer spots than an area has, and fewer readings than a spot has", () => {
    expect(problemsOf({ ...job, spots: [...job.spots, ...job.spots] })).toEqual(["refused spots"]);
    expect(problemsOf({ ...job, spots: [...job.spots.slice(0, 3), { readings: ["9 mil", "9 mil"] }] })).toEqual(["refused spots", "refused spots.3.readings"]);
  });

  it("readings without unit, of nought or of another dimension, all at once and each by its place", () => {
    const spots = [{ readings: ["9 mil", "9"] }, { readings: ["0 mil"] }, { readings: ["9 mil2"] }];
    expect(problemsOf({ ...job, spots })).toEqual(["noUnit spots.0.readings.1", "tooLow spots.1.readings.0", "unknownUnit spots.2.readings.0"]);
  });

  it("no spot, a spot without reading, and teeth on a dry film", () => {
    expect(problemsOf({ ...job, spots: [] })).toEqual(["refused spots"]);
    expect(problemsOf({ ...job, spots: [{}, { readings: [] }, ...job.spots] })).toEqual(["refused spots.0", "refused spots.1"]);
    expect(problemsOf({ ...job, rule: "band", spots: [{ teeth: [{ lastWetTooth: "8 mil", firstDryTooth: "10 mil" }] }] })).toEqual(["refused spots.0.teeth"]);
  });

  it("a most below the least, and a dry tooth below the wet one", () => {
    expect(problemsOf({ ...job, most: "7 mil" })).toEqual(["tooLow most"]);
    expect(problemsOf({ film: "wet", rule: "band", least: "15 mil", spots: [{ teeth: [{ lastWetTooth: "18 mil", firstDryTooth: "16 mil" }] }] })).toEqual(["tooLow spots.0.teeth.0.firstDryTooth"]);
  });
});

describe("filmReadingCheck", () => {
  it("is the same check of films a thousand times thicker, and never passes where a spot is lowered below what failed", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 50, max: 160 }), { minLength: 5, maxLength: 5 }), fc.nat({ max: 4 }), (readings, at) => {
        const check = (unit: string, values: readonly number[]): boolean =>
          filmReadingCheck({ film: "dry", rule: "SSPC-PA 2 level 3", least: `80 ${unit}`, spots: spotsOf(...values.map((value) => `${String(value)} ${unit}`)) }).passes;
        const passes = check("um", readings);
        expect(check("mm", readings)).toBe(passes);
        const lowered = readings.map((value, index) => (index === at ? value - 10 : value));
        if (!passes) expect(check("um", lowered)).toBe(false);
      }),
      { numRuns: 40 },
    );
  });
});

describe("what filmReadingCheck says to do", () => {
  const advice = { under: "Where the film is under", over: "Where the film is over", step: "From each spot that fails" };
  const told = (job: Job): readonly string[] => filmReadingCheck(job).next.flatMap((line) => Object.entries(advice).flatMap(([name, words]) => (line.startsWith(words) ? [name] : [])));

  it("of a dry film: add where it is under, ask where it is over, each only where it is so", () => {
    const job = (...means: readonly string[]): Job => ({ film: "dry", rule: "SSPC-PA 2 level 3", least: "8 mil", most: "12 mil", spots: spotsOf(...means) });
    expect(told(job("6.3 mil", "10 mil", "10 mil", "10 mil", "10 mil"))).toEqual(["step", "under"]);
    expect(told(job("14.5 mil", "10 mil", "10 mil", "10 mil", "10 mil"))).toEqual(["step", "over"]);
    expect(told(job("10 mil", "10 mil", "10 mil", "10 mil", "10 mil"))).toEqual([]);
    // A spot of 6 mil and an area of 7.6 mil: the spot is stepped out from, though the area fails too.
    expect(told(job("6 mil", "8 mil", "8 mil", "8 mil", "8 mil"))).toEqual(["step", "under"]);
  });

  it("of a wet film: more, less, or a longer tooth while it is wet", () => {
    const next = (spot: object): readonly string[] => filmReadingCheck({ film: "wet", rule: "band", least: "15 mil", most: "22 mil", spots: [spot] }).next.map((line) => line.split(" ")[0] ?? "");
    expect(next({ readings: ["14 mil"] })).toEqual(["Put"]);
    expect(next({ readings: ["23 mil"] })).toEqual(["Roll"]);
    expect(next({ teeth: [{ lastWetTooth: "16 mil" }] })).toEqual(["Read"]);
    expect(next({ teeth: [{ lastWetTooth: "0 mil", firstDryTooth: "2 mil" }] })).toEqual(["Put"]);
  });

  it("cautions that a tooth is no figure only where figures of a wet film are given", () => {
    const cautions = (film: "wet" | "dry", spots: Job["spots"]): string => filmReadingCheck.solve({ film, rule: "band", least: "15 mil", most: "22 mil", spots }).cautions.join(" ");
    expect(cautions("wet", [{ readings: ["16 mil"] }, { teeth: [{ lastWetTooth: "16 mil", firstDryTooth: "18 mil" }] }])).toContain("give teeth");
    expect(cautions("wet", [{ teeth: [{ lastWetTooth: "16 mil", firstDryTooth: "18 mil" }] }])).not.toContain("give teeth");
    expect(cautions("dry", [{ readings: ["16 mil"] }])).not.toContain("give teeth");
    expect(cautions("wet", [{ readings: ["16 mil"] }])).toContain("A wet film steers the work");
    expect(cautions("dry", [{ readings: ["16 mil"] }])).not.toContain("A wet film steers the work");
    expect(filmReadingCheck.solve({ film: "dry", rule: "ISO 19840", least: "8 mil", spots: spotsOf("9 mil") }).cautions.join(" ")).not.toContain("written for metal");
  });

  it("a band may have no most: then only what is under fails, and it is said", () => {
    const open = filmReadingCheck.solve({ film: "dry", rule: "band", least: "15 mil", spots: [{ readings: ["16 mil", "99 mil"] }] });
    expect(open.answers.passes).toBe(true);
    expect("allowedMost" in open.answers).toBe(false);
    expect(open.assumptions).toEqual(["no most is specified, so none is checked"]);
    const closed = filmReadingCheck.solve({ film: "dry", rule: "band", least: "15 mil", most: "22 mil", spots: [{ readings: ["16 mil", "18 mil"] }] });
    expect(closed.answers.allowedMost?.toString()).toBe("22 mil");
    expect(closed.assumptions).toEqual([]);
    expect(closed.answers.spots[0]?.mean?.toString()).toBe("17 mil");
    // One figure may be both ends.
    expect(filmReadingCheck({ film: "dry", rule: "band", least: "15 mil", most: "15 mil", spots: [{ readings: ["15 mil"] }] }).passes).toBe(true);
  });

  it("asks for a spot, and for readings at each", () => {
    expect(problemsOf({ film: "dry", rule: "band", least: "15 mil", spots: [] })).toEqual(["refused spots"]);
    const wanted = (film: "wet" | "dry"): string | undefined => {
      const tried = filmReadingCheck.try({ film, rule: "band", least: "15 mil", spots: [{}] });
      return tried.ok ? "" : tried.problems[0]?.wanted;
    };
    expect([wanted("wet"), wanted("dry")]).toEqual(["give readings or teeth", "give readings"]);
  });

  it("allows nothing either way by SSPC-PA 9 level 1, and a quarter below by level 4 (study cards: 75 % and no most)", () => {
    const check = (rule: Job["rule"], ...means: readonly string[]): readonly string[] => filmReadingCheck({ film: "dry", rule, least: "40 mil", ...(rule === "SSPC-PA 9 level 1" ? { most: "60 mil" } : {}), spots: spotsOf(...means) }).fails.map(({ where, is }) => `${where} ${is}`);
    expect(check("SSPC-PA 9 level 1", "39 mil", "61 mil", "50 mil", "50 mil", "50 mil")).toEqual(["spot 1 under", "spot 2 over"]);
    expect(check("SSPC-PA 9 level 4", "30 mil", "50 mil", "50 mil", "50 mil", "50 mil")).toEqual([]);
    expect(check("SSPC-PA 9 level 4", "29.9 mil", "50 mil", "50 mil", "50 mil", "50 mil")).toEqual(["spot 1 under"]);
  });

  it("passes readings that are all just nominal by ISO 19840, and assumes nothing of a most that is given", () => {
    expect(filmReadingCheck({ film: "dry", rule: "ISO 19840", least: "8 mil", spots: spotsOf("8 mil", "8 mil") }).passes).toBe(true);
    const given = filmReadingCheck.solve({ film: "dry", rule: "SSPC-PA 9 level 1", least: "40 mil", most: "60 mil", spots: spotsOf("59 mil", "50 mil", "50 mil", "50 mil", "50 mil") });
    expect([given.assumptions, given.answers.fails]).toEqual([[], []]);
    expect(given.cautions.join(" ")).not.toContain("written for metal");
  });
});
