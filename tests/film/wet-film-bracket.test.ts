import { describe, expect, it } from "vitest";
import { wetFilmBracket } from "../../src/film/wet-film-bracket.js";

const band = { least: "15 mil", most: "22 mil" } as const;

describe("wetFilmBracket", () => {
  it("lies between the last tooth that is wet and the first that is dry (ASTM D4414, as quoted)", () => {
    const solution = wetFilmBracket.solve({ lastWetTooth: "16 mil", firstDryTooth: "18 mil" });
    expect(solution.answers).toMatchObject({ open: false });
    expect([solution.answers.atLeast.toString(), solution.answers.below?.toString()]).toEqual(["16 mil", "18 mil"]);
    expect(Object.keys(solution.answers)).toEqual(["atLeast", "below", "open"]);
    expect(solution.bases.map((basis) => (basis.kind === "published" ? basis.title.slice(0, 5) : ""))).toContain("D4414");
  });

  it("judges a least at the lower end and a most at the upper", () => {
    const judge = (lastWetTooth: "14 mil", firstDryTooth: "16 mil"): readonly unknown[] => {
      const { leastReached, mostKept } = wetFilmBracket({ lastWetTooth, firstDryTooth, ...band });
      return [leastReached, mostKept];
    };
    expect(judge("14 mil", "16 mil")).toEqual(["no", "yes"]);
    expect(judge("15 mil" as "14 mil", "16 mil")).toEqual(["yes", "yes"]);
    expect(judge("20 mil" as "14 mil", "22 mil" as "16 mil")).toEqual(["yes", "yes"]);
    expect(judge("20 mil" as "14 mil", "24 mil" as "16 mil")).toEqual(["yes", "no"]);
  });

  it("is open where the highest tooth is wet: a most cannot be told, unless that tooth is over it", () => {
    const open = wetFilmBracket.solve({ lastWetTooth: "20 mil", ...band });
    expect(open.answers).toMatchObject({ open: true, leastReached: "yes", mostKept: "cannot be told" });
    expect(open.answers).not.toHaveProperty("below");
    expect(open.cautions.join(" ")).toContain("highest tooth was wet");
    expect(wetFilmBracket({ lastWetTooth: "30 mil", ...band }).mostKept).toBe("no");
    expect(wetFilmBracket({ lastWetTooth: "22 mil", ...band }).mostKept).toBe("cannot be told");
  });

  it("takes one figure for least and most, and warns of nothing where a dry tooth was read", () => {
    const one = wetFilmBracket.solve({ lastWetTooth: "16 mil", firstDryTooth: "18 mil", least: "16 mil", most: "16 mil" });
    expect([one.answers.leastReached, one.answers.mostKept]).toEqual(["yes", "no"]);
    expect(one.cautions.join(" ")).not.toContain("highest tooth was wet");
  });

  it("starts at nought where no tooth is wet", () => {
    expect(wetFilmBracket({ lastWetTooth: "0 mil", firstDryTooth: "2 mil", least: "1 mil" }).leastReached).toBe("no");
  });

  it("refuses a dry tooth that is not above the wet one, and a most below the least, at once", () => {
    const tried = wetFilmBracket.try({ lastWetTooth: "18 mil", firstDryTooth: "18 mil", least: "22 mil", most: "15 mil" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")])).toEqual([["tooLow", "firstDryTooth"], ["tooLow", "most"]]);
    expect(wetFilmBracket.try({ lastWetTooth: "18", firstDryTooth: "20 mil" })).toMatchObject({ ok: false, problems: [{ code: "noUnit", path: ["lastWetTooth"] }] });
  });
});
