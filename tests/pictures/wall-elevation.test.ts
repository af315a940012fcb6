import { describe, expect, it } from "vitest";
import { wallElevation } from "../../src/pictures/wall-elevation.js";
import { described, legendIn, numbersIn, of, type Tag, tagsIn } from "./read-svg.js";
import { pier, wall } from "./samples.js";

const number = (tag: Tag | undefined, name: string): number => Number(tag?.attributes[name]);

describe("wallElevation", () => {
  it("draws every unit to scale in its course", () => {
    const tags = tagsIn(wallElevation(pier));
    const [left = 0, foot = 0, right = 0, , , top = 0] = numbersIn(of(tags, "wall", "polygon")[0]?.attributes.points ?? "");
    // 95.625 in lie on 900: the height, 40 in, is no tighter at 15 to the inch.
    const scale = 900 / 95.625;
    expect(right - left).toBeCloseTo(900, 1);
    expect(foot - top).toBeCloseTo(40 * scale, 1);
    const units = of(tags, "units", "rect");
    // By hand: 5 courses of 8 whole units, and 5 of 7 whole ones between two halves of (11-5/8 - 3/8) / 2 = 5-5/8 in.
    expect(units).toHaveLength(5 * 8 + 5 * 9);
    expect(of(tags, "units", "line")).toHaveLength(10);
    units.slice(0, 8).forEach((unit, index) => {
      expect(number(unit, "x")).toBeCloseTo(left + 12 * index * scale, 1);
      expect(number(unit, "width")).toBeCloseTo(11.625 * scale, 1);
      expect(number(unit, "y")).toBeCloseTo(foot - 3.625 * scale, 1);
      expect(number(unit, "height")).toBeCloseTo(3.625 * scale, 1);
    });
    const second = units.slice(8, 17);
    [5.625, ...Array.from({ length: 7 }, () => 11.625), 5.625].forEach((width, index) => {
      expect(number(second[index], "width")).toBeCloseTo(width * scale, 1);
    });
    expect(number(second[0], "y")).toBeCloseTo(foot - 7.625 * scale, 1);
  });

  it("writes the courses with their marks, the dimensions, and what it shows", () => {
    const svg = wallElevation(pier);
    const tags = tagsIn(svg);
    expect(of(tags, "courses", "text").map(({ text }) => text).slice(0, 3)).toEqual(["course 1: 3-5/8 in", "course 2: 7-5/8 in", "course 3: 11-5/8 in"]);
    expect(of(tags, "courses", "text").at(-1)?.text).toBe("course 10: 3 ft 3-5/8 in");
    expect(of(tags, "dimensions", "text").map(({ text }) => text)).toEqual(["7 ft 11-5/8 in", "3 ft 4 in"]);
    expect(described(svg)).toBe(
      "A wall 7 ft 11-5/8 in wide and 3 ft 4 in high with no openings. The wall has 10 courses with bed joints of 3/8 in. It shows 85 units: 75 whole and 10 cut to close a course. No movement joints are drawn.",
    );
    expect(legendIn(svg)).not.toContain("movement joint");
  });

  it("draws each movement joint in its place, as long as the layout has it, with its reasons", () => {
    const svg = wallElevation(wall);
    const tags = tagsIn(svg);
    const [left = 0, foot = 0, right = 0, , , top = 0] = numbersIn(of(tags, "wall", "polygon")[0]?.attributes.points ?? "");
    // Of 30 ft x 18 ft on 900 x 600 the width governs: 30 to the foot.
    expect([right - left, foot - top]).toEqual([900, 540]);
    const black = of(tags, "movement-joints", "line").filter(({ attributes }) => attributes.stroke === undefined);
    const upright = black.filter(({ attributes }) => attributes.x1 === attributes.x2);
    expect(upright.map((one) => number(one, "x1") - left)).toEqual([0, 270, 270, 600, 720]);
    // At 9 ft it follows the jamb of the window, which takes 5 ft of it; the window stands from 3 ft to 8 ft.
    expect(upright.map((one) => number(one, "y2") - number(one, "y1"))).toEqual([540, 300, 90, 540, 540]);
    const level = black.filter(({ attributes }) => attributes.y1 === attributes.y2);
    expect(level.map((one) => [foot - number(one, "y1"), number(one, "x2") - number(one, "x1")])).toEqual([[270, 900]]);
    expect(of(tags, "joint-letters", "text").map(({ text }) => text)).toEqual(["J1", "J2", "J3", "J4", "J5"]);
    const list = "J1 at 0 in (inside corner); J2 at 9 ft (jamb, spacing); J3 at 20 ft (backing joint); J4 at 24 ft (outside corner); J5 up 9 ft (floor line).";
    expect(legendIn(svg)).toContain(list);
    expect(described(svg)).toContain(`Movement joints: ${list}`);
    expect(of(tags, "dimensions", "text").map(({ text }) => text)).toEqual(["9 ft", "4 ft", "17 ft", "9 ft", "11 ft", "4 ft", "6 ft", "30 ft", "3 ft", "5 ft", "10 ft", "9 ft", "9 ft", "18 ft"]);
  });

  it("leaves out units that lie in an opening, and marks those it cuts", () => {
    // The pier with an opening over the third and fourth unit of its first course, from the foot to the top of course 1.
    const svg = wallElevation({ ...pier, openings: [{ left: "24 in", bottom: "0 in", width: "24 in", height: "4 in" }] });
    expect(of(tagsIn(svg), "units", "rect")).toHaveLength(83);
    expect(described(svg)).toContain("It shows 83 units: 73 whole and 10 cut");
    expect(described(svg)).not.toContain("meet an opening");
    const low = wallElevation({ ...pier, openings: [{ left: "30 in", bottom: "0 in", width: "12 in", height: "2 in" }] });
    expect(described(low)).toContain("2 of them meet an opening and are cut there.");
    expect(of(tagsIn(low), "units", "line")).toHaveLength(12);
  });

  it("refuses what does not belong together", () => {
    expect(() => wallElevation({ ...wall, openings: [] })).toThrow(/the upright joint at 9 ft is 13 ft long, and no opening given here shortens it/);
    expect(() => wallElevation({ ...wall, openings: [...wall.openings, { left: "19 ft", bottom: "3 ft", width: "2 ft", height: "2 ft" }] })).toThrow(/was laid out without the opening it meets here/);
    expect(() => wallElevation({ ...wall, width: "31 ft" })).toThrow(/it was laid out on a wall 30 ft wide and 18 ft high, and this one is 31 ft by 18 ft/);
    expect(() => wallElevation({ ...pier, height: "39 in" })).toThrow("pictures.wall-elevation: panels[0]: its courses or its bond reach beyond the wall");
    expect(() => wallElevation({ ...pier, width: "5" as never, panels: [] })).toThrow(/width: "5" has no unit[^]*panels: 0 in the list/);
    expect(() => wallElevation({ ...pier, panels: [{ ...pier.panels[0], bond: "half" } as never] })).toThrow('panels[0].bond: "half" cannot be read; give the answers of bondPattern as they came');
  });
});
