import { describe, expect, it } from "vitest";
import { faultsIn } from "./read-svg.js";

const sheet = (inside: string): string => `<svg viewBox="0 0 100 100" role="img" aria-labelledby="a b"><title id="a">A</title><desc id="b">B</desc>${inside}</svg>`;
const text = (words: string, x: number, y: number, more = ""): string => `<text x="${String(x)}" y="${String(y)}" font-size="10" text-anchor="start"${more}>${words}</text>`;

describe("the check of every picture", () => {
  it("finds nothing wrong with words beside each other", () => {
    expect(faultsIn(sheet(text("abc", 10, 20) + text("abc", 10, 32) + text("abc", 60, 60, ' transform="rotate(-90 60 60)"')))).toEqual([]);
  });

  it.each([
    [text("abc", 10, 20) + text("abc", 20, 24), ['"abc" lies on "abc"']],
    [text("abc", 90, 20), ['"abc" is off the sheet']],
    [text("abcdefgh", 50, 30, ' transform="rotate(-90 50 30)"'), ['"abcdefgh" is off the sheet']],
    ['<rect x="10" y="10" width="95" height="5"/>', ["rect at 105, 15 is off the sheet"]],
    ['<path d="M1 2L3 -4"/>', ["path at 3, -4 is off the sheet"]],
    ['<line x1="0" y1="0" x2="5" y2="5" stroke="red"/>', ["red is neither black nor white"]],
    ['<g style="color:red"></g>', ["g has style"]],
    ['<g onclick="x"></g>', ["g has onclick"]],
    ['<use href="#a"></use>', ["use is not allowed", "use has href"]],
    ["<style>a</style>", ["style is not allowed"]],
    [text("", 5, 5), ["words without letters"]],
  ])("finds what is wrong with %s", (inside, faults) => {
    expect(faultsIn(sheet(inside))).toEqual(faults);
  });

  it("finds a picture without a name, and one that is no XML", () => {
    expect(faultsIn('<svg viewBox="0 0 9 9" role="img"><title>A</title></svg>')).toEqual(["it is not named by its title and description"]);
    expect(() => faultsIn("<svg><g></svg>")).toThrow();
  });
});
