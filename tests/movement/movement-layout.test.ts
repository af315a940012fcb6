import { describe, expect, it } from "vitest";
import { movementLayout } from "../../src/movement/movement-layout.js";
import { faults } from "../support/faults.js";

type Job = Parameters<typeof movementLayout>[0];

const plain: Job = {
  wall: { kind: "rectangle", width: "30 ft", height: "10 ft" },
  leftEnd: { at: "inside corner" },
  rightEnd: { at: "other material" },
  openings: [],
  floorLines: [],
  backingJoints: { upright: [], level: [] },
  mostAcross: "12 ft",
  mostUp: "12 ft",
};
const window = { shape: { kind: "rectangle", width: "4 ft", height: "5 ft" }, left: "13 ft", bottom: "3 ft" } as const;

const at = (job: Job): readonly string[] => movementLayout(job).upright.map((joint) => joint.at.toString());
const why = (job: Job): readonly string[] => movementLayout(job).upright.map((joint) => joint.why.join(" and "));
const levels = (job: Job): readonly string[] => movementLayout(job).level.map((joint) => joint.at.toString());

describe("movementLayout places upright joints", () => {
  it("evenly and as few as the spacing allows: 30 ft at 12 ft are 3 parts of 10 ft", () => {
    expect(at(plain)).toEqual(["0 ft", "10 ft", "20 ft", "30 ft"]);
    expect(why(plain)).toEqual(["inside corner", "spacing", "spacing", "other material"]);
  });

  it("with none more at the spacing itself, and one more a hair beyond it", () => {
    const wide = (width: "24 ft" | "23.999 ft" | "24.001 ft"): number => movementLayout({ ...plain, wall: { kind: "rectangle", width, height: "10 ft" } }).upright.length;
    expect([wide("23.999 ft"), wide("24 ft"), wide("24.001 ft")]).toEqual([3, 3, 4]);
  });

  it("at every joint of the backing, however near two lie, and between these as few as may be", () => {
    const job = { ...plain, backingJoints: { upright: ["17 ft", "18 ft"], level: [] } } as const;
    // 17 ft are two parts of 8.5; 12 ft are one
    expect(at(job)).toEqual(["0 ft", "8.5 ft", "17 ft", "18 ft", "30 ft"]);
    expect(why(job)).toEqual(["inside corner", "spacing", "backing joint", "backing joint", "other material"]);
  });

  it("at a joint of the backing that lies at a corner", () => {
    const job = { ...plain, rightEnd: { at: "outside corner", firstJointWithin: "6 ft" }, backingJoints: { upright: ["30 ft", "0 ft"], level: [] } } as const;
    expect(at(job)).toEqual(["0 ft", "10 ft", "20 ft", "30 ft"]);
    expect(why(job)[0]).toBe("inside corner and backing joint");
    expect(why(job)[3]).toBe("backing joint");
  });

  it("near an outside corner, at the distance told or a jamb within it", () => {
    const job = { ...plain, leftEnd: { at: "outside corner", firstJointWithin: "6 ft" } } as const;
    // from 6 ft on 24 ft are two parts of 12
    expect(at(job)).toEqual(["6 ft", "18 ft", "30 ft"]);
    expect(at({ ...job, openings: [{ ...window, left: "5 ft" }] })[0]).toBe("5 ft");
    expect(why({ ...job, openings: [{ ...window, left: "5 ft" }] })[0]).toBe("jamb and outside corner");
    // A jamb on the corner itself is no joint near it.
    expect(at({ ...job, openings: [{ shape: { kind: "rectangle", width: "8 ft", height: "5 ft" }, left: "0 ft", bottom: "3 ft" }] })[0]).toBe("6 ft");
    // A joint of the backing within the distance is enough, and one at it; one beyond is not.
    const backed = (place: "4 ft" | "6 ft" | "6.001 ft"): readonly string[] => at({ ...job, backingJoints: { upright: [place], level: [] } });
    expect(backed("4 ft")[0]).toBe("4 ft");
    expect(backed("6 ft").slice(0, 2)).toEqual(["6 ft", "18 ft"]);
    expect(backed("6.001 ft").slice(0, 2)).toEqual(["6 ft", "6.001 ft"]);
  });

  it("near both outside corners, and none but a caution on a wall shorter than the distance", () => {
    const corners = { leftEnd: { at: "outside corner", firstJointWithin: "6 ft" }, rightEnd: { at: "outside corner", firstJointWithin: "6 ft" } } as const;
    // 30 - 12 = 18 ft are two parts of 9
    expect(at({ ...plain, ...corners })).toEqual(["6 ft", "15 ft", "24 ft"]);
    const short = movementLayout.solve({ ...plain, ...corners, wall: { kind: "rectangle", width: "6 ft", height: "10 ft" } });
    expect(short.answers.upright).toEqual([]);
    expect(short.cautions.some((text) => text.includes("next face"))).toBe(true);
    expect(movementLayout.solve({ ...plain, ...corners }).cautions.some((text) => text.includes("next face"))).toBe(false);
  });

  it("at a jamb where that costs no joint more, and not where it would", () => {
    // Even places 10 and 20. First joint in [30 - 24, 12] = [6, 12]; second, after 10, in [18, 22].
    expect(at({ ...plain, openings: [{ ...window, left: "7 ft" }] })).toEqual(["0 ft", "11 ft", "20.5 ft", "30 ft"]);
    expect(at({ ...plain, openings: [{ ...window, left: "6 ft" }] })[1]).toBe("10 ft");
    expect(at({ ...plain, openings: [{ ...window, left: "1 ft" }] })[1]).toBe("10 ft");
    // A jamb at the end of what is allowed: at 6 ft the rest is 24 ft, two parts of 12.
    expect(at({ ...plain, openings: [{ shape: { kind: "rectangle", width: "10 ft", height: "5 ft" }, left: "6 ft", bottom: "3 ft" }] })).toEqual(["0 ft", "6 ft", "18 ft", "30 ft"]);
  });
});

describe("movementLayout places level joints", () => {
  it("at every floor line and level joint of the backing, and between them by the spacing", () => {
    const tall = { ...plain, wall: { kind: "rectangle", width: "10 ft", height: "40 ft" }, floorLines: ["10 ft", "20 ft"], backingJoints: { upright: [], level: ["20 ft", "21 ft"] } } as const;
    // 21 to 40 are 19 ft: two parts of 9.5
    expect(levels(tall)).toEqual(["10 ft", "20 ft", "21 ft", "30.5 ft"]);
    expect(movementLayout(tall).level[1]?.why).toEqual(["floor line", "backing joint"]);
  });

  it("at a head or a sill where that costs no joint more", () => {
    // 20 ft at 12 ft: one joint in [8, 12]
    const two = { ...plain, wall: { kind: "rectangle", width: "10 ft", height: "20 ft" } } as const;
    expect(levels(two)).toEqual(["10 ft"]);
    expect(levels({ ...two, openings: [{ ...window, left: "2 ft", bottom: "4 ft" }] })).toEqual(["9 ft"]);
    expect(levels({ ...two, openings: [{ ...window, left: "2 ft", bottom: "12 ft" }] })).toEqual(["12 ft"]);
    expect(levels({ ...two, openings: [{ ...window, left: "2 ft", bottom: "12.001 ft" }] })).toEqual(["10 ft"]);
  });
});

describe("movementLayout measures", () => {
  it("joints with openings out, and says which run over or under one", () => {
    const job = { ...plain, openings: [{ ...window, left: "8.5 ft" }], backingJoints: { upright: ["10 ft", "20 ft"], level: [] } } as const;
    const { upright, jointLength } = movementLayout(job);
    // 10 - 5 through the window; 10 + 5 + 10 + 10 = 35
    expect(upright.map(({ length, throughOpening }) => [length.toString(), throughOpening])).toEqual([["10 ft", false], ["5 ft", true], ["10 ft", false], ["10 ft", false]]);
    expect(jointLength.toString()).toBe("35 ft");
    expect(movementLayout.solve(job).cautions.some((text) => text.includes("over or under an opening"))).toBe(true);
  });

  it("a joint along a jamb above and below the opening alone", () => {
    const { upright } = movementLayout({ ...plain, openings: [{ ...window, left: "6 ft" }, { ...window, left: "6 ft", bottom: "4 ft" }], backingJoints: { upright: ["10 ft", "20 ft"], level: [] } });
    // Openings from 3 to 8 and from 4 to 9 ft overlap: 6 ft are out, once.
    expect([upright[1]?.length.toString(), upright[1]?.throughOpening]).toEqual(["4 ft", false]);
    const left = movementLayout({ ...plain, openings: [{ ...window, left: "10 ft" }], backingJoints: { upright: ["10 ft", "20 ft"], level: [] } }).upright[1];
    expect([left?.length.toString(), left?.throughOpening]).toEqual(["5 ft", false]);
  });

  it("takes an arch to its springing, and no circle, off the length, so that no joint is short", () => {
    const arched = { shape: { kind: "arched", width: "4 ft", height: "3 ft", rise: "1 ft" }, left: "8 ft", bottom: "2 ft" } as const;
    const round = { shape: { kind: "round", diameter: "4 ft" }, left: "18 ft", bottom: "2 ft" } as const;
    const { upright } = movementLayout({ ...plain, openings: [arched, round], backingJoints: { upright: ["10 ft", "20 ft"], level: [] } });
    expect(upright.map(({ length }) => length.toString())).toEqual(["10 ft", "7 ft", "10 ft", "10 ft"]);
  });

  it("joints and panels under a gable as high as the rake there", () => {
    const gable = movementLayout({ ...plain, wall: { kind: "gable", width: "24 ft", height: "6 ft" }, backingJoints: { upright: ["6 ft", "12 ft"], level: [] }, floorLines: ["3 ft"] });
    // half way up at 6 ft: 3 ft; at the peak 6 ft; at the corners nothing, so there is no joint
    expect(gable.upright.map(({ at: place, length }) => `${place.toString()}: ${length.toString()}`)).toEqual(["6 ft: 3 ft", "12 ft: 6 ft"]);
    // The floor line at 3 ft runs from 6 to 18 ft.
    expect(gable.level.map(({ length }) => length.toString())).toEqual(["12 ft"]);
    // Left of 6 ft nothing stands over 3 ft: five panels, not six.
    expect(gable.panels.map(({ left, bottom, width, height }) => [left, bottom, width, height].map((one) => one.to("ft").toString()).join(" "))).toEqual(["0 0 6 3", "6 0 6 3", "6 3 6 3", "12 0 12 3", "12 3 6 3"]);
    expect(gable.longestPanel.longestSide.toString()).toBe("12 ft");
  });

  it("panels between all joints, and the longest of them", () => {
    const { panels, longestPanel } = movementLayout({ ...plain, wall: { kind: "rectangle", width: "30 ft", height: "18 ft" }, floorLines: ["11 ft"] });
    expect(panels.map(({ width, height }) => `${width.toString()} x ${height.toString()}`)).toEqual(["10 ft x 11 ft", "10 ft x 7 ft", "10 ft x 11 ft", "10 ft x 7 ft", "10 ft x 11 ft", "10 ft x 7 ft"]);
    expect([longestPanel.left.toString(), longestPanel.longestSide.toString()]).toEqual(["0 ft", "11 ft"]);
  });

  it("in metres where the spacing is metric", () => {
    const { upright, panels } = movementLayout({ ...plain, wall: { kind: "rectangle", width: "9 m", height: "3 m" }, mostAcross: "3.5 m", mostUp: "3.5 m" });
    expect(upright.map((joint) => joint.at.toString())).toEqual(["0 m", "3 m", "6 m", "9 m"]);
    expect(panels).toHaveLength(3);
  });
});

describe("movementLayout refuses", () => {
  it("joints, floors and openings beyond the wall, all at once", () => {
    expect(faults(movementLayout.try({ ...plain, backingJoints: { upright: ["30 ft", "30.001 ft"], level: ["10 ft"] }, floorLines: ["0 ft", "5 ft"] }))).toEqual(["refused backingJoints.upright.1", "refused floorLines.0", "refused backingJoints.level.0"]);
    expect(faults(movementLayout.try({ ...plain, openings: [{ ...window, left: "26 ft" }, { ...window, left: "26.001 ft" }, { ...window, bottom: "5.001 ft" }] }))).toEqual(["refused openings.1", "refused openings.2"]);
  });

  it("a curved top and an inner corner, with what to do", () => {
    expect(faults(movementLayout.try({ ...plain, wall: { kind: "segment", width: "10 ft", rise: "2 ft" } }))).toEqual(["refused wall"]);
    const bay = [{ x: "0 ft", y: "0 ft" }, { x: "10 ft", y: "0 ft" }, { x: "10 ft", y: "10 ft" }, { x: "5 ft", y: "5 ft" }, { x: "0 ft", y: "10 ft" }];
    expect(faults(movementLayout.try({ ...plain, wall: { kind: "polygon", points: bay } }))).toEqual(["refused wall"]);
  });

  it("a spacing under 1 ft, an end that is not told, and more joints than can be read", () => {
    expect(faults(movementLayout.try({ ...plain, mostAcross: "11.999 in", leftEnd: { at: "outside corner" }, rightEnd: undefined }))).toEqual(["missing leftEnd.firstJointWithin", "missing rightEnd", "tooLow mostAcross"]);
    expect(faults(movementLayout.try({ ...plain, wall: { kind: "rectangle", width: "201 ft", height: "10 ft" }, mostAcross: "1 ft" }))).toEqual(["refused mostAcross"]);
    expect(faults(movementLayout.try({ ...plain, wall: { kind: "rectangle", width: "200 ft", height: "10 ft" }, mostAcross: "1 ft" }))).toEqual([]);
  });
});
