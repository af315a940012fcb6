import { describe, expect, it } from "vitest";
import { filmChart } from "../../src/pictures/film-chart.js";
import { described, legendIn, of, type Tag, tagsIn } from "./read-svg.js";
import { coats } from "./samples.js";

const number = (tag: Tag | undefined, name: string): number => Number(tag?.attributes[name]);
const [first, both] = coats;

/** Where the axis has nought, and how much a mil takes on it, by its ticks at 0 and 20. */
function axisOf(tags: readonly Tag[]): { readonly foot: number; readonly scale: number } {
  const tick = (text: string): number => number(of(tags, "axis", "text").find((one) => one.text === text), "y");
  return { foot: tick("0"), scale: (tick("0") - tick("20")) / 20 };
}

describe("filmChart", () => {
  it("draws a bar to the mean of each spot, and a circle for each reading", () => {
    const tags = tagsIn(filmChart({ coats: [first] }));
    const { foot, scale } = axisOf(tags);
    // (16 + 18) / 2 = 17 and 14 mil; the third spot was read with a tooth gauge alone and has no mean.
    const bars = of(tags, "spot", "rect");
    expect(bars).toHaveLength(2);
    [17, 14].forEach((mil, index) => {
      expect(number(bars[index], "height")).toBeCloseTo(mil * scale, 1);
      expect(number(bars[index], "y") + number(bars[index], "height")).toBeCloseTo(foot, 1);
    });
    expect(of(tags, "spot", "circle").map((dot) => (foot - number(dot, "cy")) / scale)).toEqual([16, 18, 14].map((mil) => expect.closeTo(mil, 2) as number));
  });

  it("draws the ends of a tooth gauge, open where all teeth were wet", () => {
    const tags = tagsIn(filmChart({ coats: [first] }));
    const { foot, scale } = axisOf(tags);
    const level = of(tags, "spot", "line").filter(({ attributes }) => attributes.y1 === attributes.y2);
    expect(level.map((one) => (foot - number(one, "y1")) / scale)).toEqual([18, 20, 20].map((mil) => expect.closeTo(mil, 2) as number));
    expect(described(filmChart({ coats: [first] }))).toContain("spot 3: readings 18 mil to 20 mil, at least 20 mil, ");
  });

  it("draws the least, the most, the mean of all and what was expected, each with its figure", () => {
    const tags = tagsIn(filmChart({ coats: [both] }));
    const tick = (text: string): number => number(of(tags, "axis", "text").find((one) => one.text === text), "y");
    const scale = (tick("0") - tick("10")) / 10;
    const texts = of(tags, "limits", "text").map(({ text }) => text);
    const across = of(tags, "limits", "line").filter(({ attributes }) => attributes["stroke-width"] !== "0.6");
    // The means of the spots are 10, 11, 8, 12, 10: together 10.2; 20 mil wet at 50 % solids leave 10 mil, whose words stand apart all the same.
    expect(texts).toContain("mean of all 10.2");
    expect(texts).toContain("expected 10");
    expect(texts.map((text) => Number(text.split(" ").at(-1)))).toEqual(across.map((one) => expect.closeTo((tick("0") - number(one, "y1")) / scale, 1) as number));
    expect(texts).toContain(`least ${both.check.allowedLeast.toNumber("mil").toString()}`);
  });

  it("crosses the bars that fail and says how each spot came out", () => {
    const svg = filmChart({ coats: [first] });
    const verdicts = of(tagsIn(svg), "spot", "text").map(({ text }) => text);
    expect(verdicts).toEqual(["17", "within", "14", "under", "none", "perhaps over"]);
    expect(described(svg)).toBe(
      "First coat, wet film by a band of its own: least 15 mil, most 22 mil. left of the window: readings 16 mil, 18 mil, mean 17 mil, within; spot 2: readings 14 mil, mean 14 mil, under; spot 3: readings 18 mil to 20 mil, at least 20 mil, perhaps over. It does not pass.",
    );
    expect(of(tagsIn(svg), "keys", "text").map(({ text }) => text)).toContain("mean of a spot that fails");
    expect(legendIn(svg)).toContain("Arrow: all teeth were wet.");
  });

  it("refuses readings that the check was not made of, and what is no check", () => {
    expect(() => filmChart({ coats: [{ ...first, spots: [{ readings: ["16 mil", "19 mil"] }, ...first.spots.slice(1)] }] })).toThrow("coats[0].spots[0]: these readings do not have the mean of left of the window in the check, 17 mil; give the readings that it was made of");
    expect(() => filmChart({ coats: [{ ...first, spots: first.spots.slice(1) }] })).toThrow("2 spots: the check has 3");
    expect(() => filmChart({ coats: [{ ...first, check: true as never, spots: [{ readings: ["16" as never] }] }] })).toThrow(/check: true cannot be read; give the answers of filmReadingCheck as they came[^]*readings\[0\]: "16" has no unit/);
    expect(() => filmChart({ coats: [] })).toThrow("coats: 0 in the list: give 1 or more");
  });
});
