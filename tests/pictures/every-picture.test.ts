import { describe, expect, it } from "vitest";
import { InputError } from "../../src/core/problems.js";
import { assemblySection } from "../../src/pictures/assembly-section.js";
import { boardElevation } from "../../src/pictures/elevation.js";
import { filmChart } from "../../src/pictures/film-chart.js";
import { storyRodDrawing } from "../../src/pictures/story-rod-drawing.js";
import { temperatureChart } from "../../src/pictures/temperature-chart.js";
import { wallElevation } from "../../src/pictures/wall-elevation.js";
import { faultsIn, tagsIn } from "./read-svg.js";
import { coats, longRod, longWeather, mixedRod, pier, rod, section, temperatures, wall } from "./samples.js";

type Draw = (options?: { readonly title?: string }) => string;

const pictures: readonly (readonly [string, Draw])[] = [
  ["a pier", (options) => wallElevation(pier, options)],
  ["a wall with movement joints", (options) => wallElevation(wall, options)],
  ["a story rod", (options) => storyRodDrawing(rod, options)],
  ["a story rod of low and high courses", (options) => storyRodDrawing(mixedRod, options)],
  ["a long story rod", (options) => storyRodDrawing(longRod, options)],
  ["a section", (options) => assemblySection(section, options)],
  ["a section of one layer", (options) => assemblySection({ layers: [{ name: "stone", of: "stone", thickness: "30 mm" }] }, options)],
  ["a section of many thin layers", (options) => assemblySection({ layers: Array.from({ length: 12 }, (_, index) => ({ name: `coat ${String(index + 1)}`, of: "sheet", thickness: "20 mil" }) as const) }, options)],
  ["films", (options) => filmChart({ coats }, options)],
  ["temperatures, age and holds", (options) => temperatureChart(temperatures, options)],
  ["temperatures of days", (options) => temperatureChart(longWeather(5), options)],
  ["temperatures of weeks", (options) => temperatureChart(longWeather(30), options)],
];

describe.each(pictures)("%s", (_, draw) => {
  it("is on its sheet, in black and white, without styles, and no words lie on others", () => {
    expect(faultsIn(draw())).toEqual([]);
    expect(faultsIn(draw({ title: "A title that is rather long for the sheet, with the street, the house and the side of it; ".repeat(3) }))).toEqual([]);
  });

  it("is the same each time, and escapes what it is told", () => {
    const title = `North <b>wall</b> & "porch" 'x'\u0000\uD800`;
    expect(draw({ title })).toBe(draw({ title }));
    expect(tagsIn(draw({ title }))[1]).toMatchObject({ name: "title", text: "North &lt;b&gt;wall&lt;/b&gt; &amp; &quot;porch&quot; &#39;x&#39;" });
  });
});

describe("names from outside", () => {
  it("are escaped wherever they are written", () => {
    const name = '<script>alert("x")</script>';
    const svgs = [
      assemblySection({ layers: [{ name, of: "stone", thickness: "1 in" }] }),
      filmChart({ coats: [{ ...coats[0], name }] }),
    ];
    for (const svg of svgs) {
      expect(svg).not.toContain("<script");
      expect(faultsIn(svg)).toEqual([]);
    }
  });

  it("keep two pictures on one page apart", () => {
    const idOf = (svg: string): string | undefined => tagsIn(svg)[1]?.attributes.id;
    expect(idOf(storyRodDrawing(rod))).not.toBe(idOf(storyRodDrawing(longRod)));
  });
});

describe("what is no result", () => {
  const draws: readonly (readonly [string, (given: never) => string])[] = [
    ["boardElevation", boardElevation], ["wallElevation", wallElevation], ["storyRodDrawing", storyRodDrawing],
    ["assemblySection", assemblySection], ["filmChart", filmChart], ["temperatureChart", temperatureChart],
  ];
  it.each(draws)("is refused by %s in one error that says so", (_, draw) => {
    for (const given of [undefined, null, 5, "text", [], {}, () => 1]) expect(() => draw(given as never)).toThrow(InputError);
  });
});
