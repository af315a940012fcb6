import { describe, expect, it } from "vitest";
import { hatched } from "../../src/pictures/hatching.js";
import { wrapped } from "../../src/pictures/picture.js";
import { scaleFor } from "../../src/pictures/scale.js";
import { spread } from "../../src/pictures/spread.js";
import { numbersIn } from "./read-svg.js";

describe("spread", () => {
  it("leaves what lies apart where it is", () => {
    expect(spread([0, 20, 50], 10, 0, 100)).toEqual([0, 20, 50]);
  });

  it("moves what meets evenly to both sides", () => {
    // Three at 50 and a gap of 10: around their mean.
    expect(spread([50, 50, 50], 10, 0, 100)).toEqual([40, 50, 60]);
    // At the ends there is room to one side alone.
    expect(spread([0, 1], 10, 0, 100)).toEqual([0, 10]);
    expect(spread([99, 100], 10, 0, 100)).toEqual([90, 100]);
  });

  it("pushes on what it meets", () => {
    // 40 and 44 would stand at 37 and 47, which meets 50: three around (40 + 44 - 10 + 50 - 20) / 3 = 34.67.
    expect(spread([40, 44, 50], 10, 0, 100)).toEqual([34.666666666666664, 44.666666666666664, 54.666666666666664].map((place) => expect.closeTo(place, 9) as number));
  });

  it("stands them evenly where they do not fit", () => {
    expect(spread([5, 6, 7, 8, 9], 10, 0, 20)).toEqual([0, 5, 10, 15, 20]);
  });
});

describe("scaleFor", () => {
  it("takes round steps that hold both ends", () => {
    expect(scaleFor(3, 48, [0, 100], 6).ticks).toEqual([0, 10, 20, 30, 40, 50]);
    expect(scaleFor(0, 0.7, [0, 100], 8).ticks).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
    expect(scaleFor(-7, 12, [0, 100], 5).ticks).toEqual([-10, -5, 0, 5, 10, 15]);
  });

  it("is straight, from one end to the other", () => {
    const { at } = scaleFor(0, 50, [300, 100], 5);
    expect([0, 25, 50].map(at)).toEqual([300, 200, 100]);
  });
});

describe("wrapped", () => {
  it("keeps a number with its unit, and breaks a word that is longer than a line", () => {
    expect(wrapped("at 4 ft 6 in", 5 * 10 * 0.61, 10)).toEqual(["at", "4 ft", "6 in"]);
    expect(wrapped("aaaaaaaaaa", 5 * 10 * 0.61, 10)).toEqual(["aaaaa", "aaaaa"]);
  });
});

describe("hatched", () => {
  const area = { left: 13, top: 7, right: 94, bottom: 41 };
  it.each(["rising lines", "falling lines", "crossed lines", "level lines", "dots", "dots and triangles", "zigzag", "diagonals", "dashes"] as const)("keeps %s within the area", (hatch) => {
    const numbers = numbersIn(/ d="([^"]*)"/.exec(hatched(area, hatch))?.[1] ?? "");
    expect(numbers.length).toBeGreaterThan(3);
    numbers.forEach((number, index) => {
      const [low, high] = index % 2 === 0 ? [area.left, area.right] : [area.top, area.bottom];
      expect(number).toBeGreaterThanOrEqual(low - 0.01);
      expect(number).toBeLessThanOrEqual(high + 0.01);
    });
  });

  it("runs slanted lines at 45 degrees", () => {
    const lines = / d="([^"]*)"/.exec(hatched(area, "rising lines"))?.[1]?.split("M").filter((part) => part !== "") ?? [];
    for (const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] of lines.map(numbersIn)) expect(y1 - y2).toBeCloseTo(x2 - x1, 1);
  });
});
