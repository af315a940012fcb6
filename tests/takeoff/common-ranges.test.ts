// What a foreman would expect to see, as ranges: common practice, no source. A figure outside would be sent back to be looked at.
import { describe, expect, it } from "vitest";
import { takeOff, unitsByElevation } from "../../src/takeoff/index.js";
import { waterFromRatio } from "../../src/mortar/index.js";
import { lineOf } from "./by-hand.js";
import { entranceInFeet } from "./entrance-job.js";

const { lines, faces } = takeOff(entranceInFeet);
const packs = (item: string): number => lineOf(lines, item).packs?.toNumber() ?? 0;
const hundreds = faces.face.toNumber("ft2") / 100;

/** What is bought for 100 ft2 of stone face, or as it is said, and the range that is common practice. */
const ranges: readonly (readonly [what: string, value: number, least: number, most: number])[] = [
  ["bags of setting mortar on 100 ft2 at 1/2 in with back-butter", packs("setting mortar") / hundreds, 9, 16],
  ["bags of joint mortar on 100 ft2 in 3/8 in joints", packs("joint mortar") / hundreds, 1.5, 6],
  ["pails of 5 gal on 1000 ft2 in two coats", packs("barrier") / (hundreds / 10), 5, 8],
  ["sheets of 4 by 8 ft on 100 ft2 of backing", packs("sheathing") / (faces.backing.toNumber("ft2") / 100), 3.1, 3.8],
  ["screws in a sheet of 4 by 8 ft", lineOf(lines, "sheathing screws").net.toNumber() / 23, 40, 60],
  ["feet of tape on 100 ft2 of boards of 3 by 5 ft", lineOf(lines, "joint tape").net.toNumber("ft") / (faces.backing.toNumber("ft2") / 100), 25, 60],
  ["ft2 of flat that a foot of corner stands for", faces.cornerCover.toNumber("ft2") / faces.cornerEdges.toNumber("ft"), 0.75, 1.1],
  ["quarts of water to a bag of 50 lb", lineOf(lines, "mixing water for setting mortar").net.toNumber("qt") / packs("setting mortar"), 4.5, 7],
  ["hours at the tool on 100 ft2, setting and corners", (20 * hundreds + 0.25 * faces.cornerEdges.toNumber("ft")) / hundreds, 15, 35],
];

describe("common practice", () => {
  it.each(ranges)("%s: %d within %d to %d", (_, value, least, most) => {
    expect(value).toBeGreaterThanOrEqual(least);
    expect(value).toBeLessThanOrEqual(most);
  });

  it("packs are few more than the net, never fewer", () => {
    for (const { item, net, pack, packs: some, allowance } of lines) {
      if (pack === undefined || some === undefined || allowance === undefined) continue;
      const bought = pack.to().times(some.to()).div(net.to(pack.unit)).toNumber();
      // Where a single pack or two cover it all, most of a pack may be left over.
      if (some.toNumber() > 3) expect([item, bought >= 1, bought < 1.6]).toEqual([item, true, true]);
    }
  });
});

describe("worked by hand", () => {
  it("boxes of one lot: 30.975, 13.2 and 10.1 are 31 + 14 + 11 = 56 by elevation, and 54.275 would be 55 together", () => {
    // Units of one to the ft2, boxes of 40, with 5 %: 1180 ft2 * 1.05 / 40 = 30.975; 13.2 * 40 / 1.05 = 3520/7 ft2; 10.1 * 40 / 1.05 = 8080/21 ft2
    const areas = { south: "1180 ft2", west: "3520/7 ft2", east: "8080/21 ft2" };
    const elevations = Object.entries(areas).map(([name, area]) => ({ name, area, cornerCover: "0 ft2" }));
    const unit = { unitLength: "11-5/8 in", unitHeight: "11-5/8 in", headJoint: "3/8 in", bedJoint: "3/8 in", waste: "5 %", packCount: 40 };
    const { lots, packs: all, pooled, more } = unitsByElevation({ elevations, ...unit });
    expect([...lots.map((one) => one.packs.toString()), all.toString()]).toEqual(["31", "14", "11", "56"]);
    expect([pooled.toString(), more.toString()]).toEqual(["55", "1"]);
  });

  it("a third of a bag: 17.5 lb at 0.23 by mass is 4.025 lb of water, 1.93 qt or 1.83 L", () => {
    const water = waterFromRatio({ dryMass: "17.5 lb", ratioLow: "0.23", ratioHigh: "0.23" }).firstPour;
    expect([water.to("qt").toFixed(2), water.to("L").toFixed(2)]).toEqual(["1.93", "1.83"]);
  });
});
