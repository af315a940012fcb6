import { describe, expect, it } from "vitest";
import { storyRodDrawing } from "../../src/pictures/story-rod-drawing.js";
import { described, numbersIn, of, type Tag, tagsIn } from "./read-svg.js";
import { longRod, mixedRod, rod } from "./samples.js";

const number = (tag: Tag | undefined, name: string): number => Number(tag?.attributes[name]);
const texts = (tags: readonly Tag[], group: string): readonly string[] => of(tags, group, "text").map(({ text }) => text);

describe("storyRodDrawing", () => {
  it("draws courses and joints to scale, from the foot up", () => {
    const tags = tagsIn(storyRodDrawing(rod));
    const body = tags.find(({ attributes }) => attributes.class === "rod-body");
    const foot = number(body, "y") + number(body, "height");
    // 25 courses and 24 joints: 25 x 3-5/8 + 24 x 3/8 = 99-5/8 in.
    const scale = number(body, "height") / 99.625;
    const courses = of(tags, "courses", "rect");
    expect(courses).toHaveLength(25);
    courses.forEach((course, index) => {
      expect(number(course, "height")).toBeCloseTo(3.625 * scale, 1);
      expect(number(course, "y") + number(course, "height")).toBeCloseTo(foot - 4 * index * scale, 1);
    });
  });

  it("writes every mark at its height, as the tape reads it", () => {
    const tags = tagsIn(storyRodDrawing(rod));
    expect(texts(tags, "foot-marks")).toEqual([...rod.storyRod].reverse().map(({ foot }) => foot.reads));
    expect(texts(tags, "top-marks")).toEqual([...rod.storyRod].reverse().map(({ top }) => top.reads));
    expect(texts(tags, "numbers")).toEqual(Array.from({ length: 25 }, (_, index) => String(25 - index)));
    // Course 13 begins 12 x 4 in = 4 ft up: its line leaves the rod there.
    const body = tags.find(({ attributes }) => attributes.class === "rod-body");
    const place = texts(tags, "foot-marks").indexOf("4 ft");
    const mark = of(tags, "foot-marks", "line")[place * 2];
    expect(number(mark, "y1")).toBeCloseTo(number(body, "y") + number(body, "height") - (48 * number(body, "height")) / 99.625, 1);
    expect(described(storyRodDrawing(rod))).toContain("course 13: foot 4 ft, top 4 ft 3-5/8 in");
  });

  it("keeps the marks of low courses apart, and hatches cut ones", () => {
    const tags = tagsIn(storyRodDrawing(mixedRod));
    const places = of(tags, "top-marks", "text").map((tag) => number(tag, "y"));
    expect(places.every((place, index) => index === 0 || place - (places[index - 1] ?? 0) > 13.9)).toBe(true);
    expect(of(tags, "courses", "path")).toHaveLength(mixedRod.storyRod.filter(({ cut }) => cut).length);
    expect(texts(tags, "top-marks")[0]).toBe("1200 mm");
    expect(described(storyRodDrawing(mixedRod))).toContain("14 courses, 1 of them cut");
  });

  it("draws a long rod in lengths side by side, to one scale", () => {
    const tags = tagsIn(storyRodDrawing(longRod));
    const bodies = tags.filter(({ attributes }) => attributes.class === "rod-body");
    expect(bodies).toHaveLength(3);
    // The first length ends with the top of course 30, 119-5/8 in up; the next goes on from there to 239-5/8 in.
    expect((number(bodies[1], "height") / 120) * 119.625).toBeCloseTo(number(bodies[0], "height"), 1);
    expect(of(tags, "courses", "rect")).toHaveLength(90);
    expect(numbersIn(texts(tags, "numbers").join(" "))).toHaveLength(90);
  });

  it("says what is wanted where it is given something else", () => {
    expect(() => storyRodDrawing("rod" as never)).toThrow('pictures.story-rod-drawing: input: "rod" cannot be read; give the answers of coursing as they came');
    expect(() => storyRodDrawing(JSON.parse(JSON.stringify(rod)) as never)).toThrow(/bedJoint: an object cannot be read; it is to be a quantity of length, as the answers have it; what comes from JSON is none any more/);
    expect(() => storyRodDrawing({ ...rod, storyRod: [] })).toThrow("storyRod: 0 in the list: give 1 or more");
  });
});
