import { describe, expect, it } from "vitest";
import { assemblySection } from "../../src/pictures/assembly-section.js";
import { described, legendIn, of, type Tag, tagsIn } from "./read-svg.js";
import { section } from "./samples.js";

const number = (tag: Tag | undefined, name: string): number => Number(tag?.attributes[name]);

describe("assemblySection", () => {
  it("draws thicknesses to scale, the studs at the top", () => {
    const layers = of(tagsIn(assemblySection(section)), "layers", "rect");
    // 3-1/2 + 3 x 1/2 + 1-1/4 in and 36 mil come to 6.286 in on 300; the stud stands in the first layer.
    const scale = 300 / 6.286;
    const [cavity, stud, ...others] = layers;
    expect(number(cavity, "height")).toBeCloseTo(3.5 * scale, 1);
    expect(number(stud, "height")).toBeCloseTo(3.5 * scale, 1);
    expect(number(stud, "width")).toBeCloseTo(1.5 * scale, 1);
    // Paper of 0.010 in and a film of 0.026 in would be 0.5 and 1.2 thick, and are drawn as 2.
    [0.5 * scale, 2, 0.5 * scale, 2, 0.5 * scale, 1.25 * scale].forEach((height, index) => {
      expect(number(others[index], "height")).toBeCloseTo(height, 1);
    });
    others.slice(1).forEach((layer, index) => {
      expect(number(layer, "y")).toBeCloseTo(number(others[index], "y") + number(others[index], "height"), 1);
    });
  });

  it("sets studs at their spacing", () => {
    const studs = of(tagsIn(assemblySection({ layers: [{ name: "studs", of: "studs", thickness: "150 mm", faceWidth: "45 mm", spacing: "60 mm" }] })), "layers", "rect").slice(1);
    // 150 mm on 300: 2 to the mm, so that 460 hold 230 mm: three studs 60 mm apart.
    expect(studs).toHaveLength(3);
    expect(studs.slice(1).map((stud, index) => number(stud, "x") - number(studs[index], "x"))).toEqual([120, 120]);
  });

  it("labels each layer with its thickness and its weight, and tells what is too thin and what is not drawn", () => {
    const svg = assemblySection(section);
    expect(of(tagsIn(svg), "labels", "text").map(({ text }) => text)).toEqual([
      "1  studs, 3-1/2 in", "2  sheathing, 1/2 in", "3  building paper, 10 mil", "4  cement board, 1/2 in", "5  barrier, 26 mil",
      "6  setting bed, 1/2 in, 5.5 lb/ft2 dry, 6.05 lb/ft2 wet", "7  stone, 1-1/4 in, 15.6 lb/ft2 dry, 16.3 lb/ft2 wet",
    ]);
    expect(legendIn(svg)).toContain("Too thin for the scale, and drawn thicker: 3, 5.");
    // 15.625 + 5.5 + 1 lb/ft2 dry; wet 16.25 + 6.05 + 1.1.
    expect(legendIn(svg)).toContain("What is weighed comes to 22.1 lb/ft2 dry and 23.4 lb/ft2 wet. Weighed and not drawn: joint mortar, 1 lb/ft2 dry, 1.1 lb/ft2 wet.");
    expect(described(svg)).toContain("A wall 6.286 in thick in 7 layers, from the inside out: 1 studs, 3-1/2 in, 1-1/2 in wide every 16 in; 2 sheathing, 1/2 in;");
  });

  it("gives a key to each hatching it uses and to no other", () => {
    const keys = of(tagsIn(assemblySection(section)), "keys", "text").map(({ text }) => text);
    expect(keys).toEqual(["stud, cut across", "wood sheathing", "sheet or film", "cement or gypsum board", "mortar", "stone or brick units"]);
  });

  it("draws a bar to measure by", () => {
    const [bar] = of(tagsIn(assemblySection(section)), "scale", "line");
    expect(number(bar, "x2") - number(bar, "x1")).toBeCloseTo((4 * 300) / 6.286, 1);
  });

  it("says what is wanted where it is given something else", () => {
    expect(() => assemblySection({ layers: [{ name: "stone", of: "stone", thickness: "1" as never }, { name: "bed", of: "glue" as never, thickness: "1/2 in" }] })).toThrow(/layers\[0\]\.thickness: "1" has no unit[^]*layers\[1\]\.of: "glue" is not offered; write one of studs, masonry/);
    expect(() => assemblySection({ layers: [{ name: "studs", of: "studs", thickness: "3-1/2 in" } as never] })).toThrow(/faceWidth: is missing[^]*spacing: is missing/);
    expect(() => assemblySection({ layers: [{ name: "gap", of: "air", thickness: "0 in" }] })).toThrow("layers[0].thickness: 0 in: a layer is thicker than nought");
    expect(() => assemblySection({ layers: [{ name: "plaster", of: "mortar", thickness: "1 in" }], ...(section.weight === undefined ? {} : { weight: section.weight }) })).toThrow("none of its layers has the name of one here; the section has plaster");
    expect(() => assemblySection({ layers: [{ name: "stone", of: "stone", thickness: "1 in" }], weight: {} as never })).toThrow(/weight\.layers: is missing/);
  });
});
