// What must hold of any job, whatever its figures: areas close, the corner cover is taken once, a volume is an area times
// a thickness, parts add up to the whole, and more wall never needs less. Jobs are drawn at random from a fixed seed.
import { describe, expect, it } from "vitest";
import { compare, quantity, sum } from "../../src/core/index.js";
import { type Job, takeOff } from "../../src/takeoff/index.js";
import { lineOf } from "./by-hand.js";

/** Numbers that look drawn by lot and are the same in every run (a linear congruential generator). */
function lot(seed: number): (from: number, to: number) => number {
  let state = seed;
  return (from, to) => {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31;
    return from + Math.floor((state / 2 ** 31) * (to - from + 1));
  };
}

interface Drawn {
  readonly job: Job;
  readonly bed: string;
}

function drawn(seed: number, lots: "together" | "by elevation" = "together"): Drawn {
  const draw = lot(seed);
  const names = ["a", "b", "c"].slice(0, draw(1, 3));
  const bed = `${String(draw(1, 6))}/8 in`;
  const elevations = names.map((name, index): Job["elevations"][number] => {
    const [width, height] = [draw(16, 60), draw(8, 14)];
    const other = names[index + 1];
    return {
      name,
      shape: { kind: "rectangle", width: `${String(width)} ft`, height: `${String(height)} ft` },
      openings: [
        { shape: { kind: "rectangle", width: `${String(draw(24, 48))} in`, height: `${String(draw(24, 60))} in` }, count: draw(1, 3), returnDepth: `${String(draw(0, 8))} in`, returnUnits: draw(0, 1) === 0 ? "corner" : "flat", toBase: false },
      ],
      outsideCorners: [{ height: "7 ft", otherFace: "unclad" }, ...(other === undefined ? [] : [{ height: "8 ft", otherFace: "elevation" as const, with: other }])],
      insideCorners: other === undefined ? [] : [{ height: `${String(draw(2, 8))} ft`, otherFace: "elevation", with: other }],
      soffits: draw(0, 1) === 0 ? [] : [{ length: `${String(draw(2, 9))} ft`, depth: "2 ft" }],
    };
  });
  const columns = draw(0, 1) === 0 ? [] : [{ name: "columns", width: "18 in", depth: `${String(draw(12, 30))} in`, height: "9 ft", count: draw(1, 4) }];
  return {
    bed,
    job: {
      measuredTo: "backing",
      elevations,
      columns,
      layers: [
        { kind: "setting bed", name: "setting", bed: { from: "thickness", thickness: bed }, backButter: "1/8 in", butteredShare: "100 %" },
        { kind: "units", name: "flats", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", unitThickness: "1 in", headJoint: "3/8 in", bedJoint: "3/8 in", lots, corners: { name: "corners", longLeg: "8 in", shortLeg: "4 in" } },
      ],
      packs: { setting: { bag: "50 lb", yield: "0.45 ft3", waterLow: "5 qt", waterHigh: "6 qt" }, flats: { pieces: 40 }, corners: { pieces: 12 } },
      allowances: { setting: { waste: "15 %" }, flats: { waste: "8 %" }, corners: { waste: "5 %" } },
    },
  };
}

const seeds = Array.from({ length: 40 }, (_, index) => 7 + 1000 * index);

describe.each(seeds)("a job drawn by lot (%i)", (seed) => {
  const { job, bed } = drawn(seed);
  const list = takeOff(job);
  const { face, flats, cornerCover, backing } = list.faces;

  it("areas close: flat and corner cover are the whole face, and what is left over is told", () => {
    expect(compare(sum([flats, cornerCover]), face)).toBe(0);
    // backing = walls - openings + soffits, by elevation
    const ft2 = (key: "walls" | "openings" | "soffits"): number => list.elevations.reduce((total, one) => total + one[key].toNumber("ft2"), 0);
    expect(backing.toNumber("ft2")).toBeCloseTo(ft2("walls") - ft2("openings") + ft2("soffits"), 9);
  });

  it("volume is area times thickness: bed and back-butter over the whole face, corner cover in", () => {
    const thickness = sum([quantity("length", bed as never), quantity("length", "1/8 in")]);
    expect(lineOf(list.lines, "setting").net.toNumber("ft3")).toBeCloseTo((face.toNumber("ft2") * thickness.toNumber("in")) / 12, 9);
  });

  it("three flat units a ft2 of what the corner units leave, and three corner units a foot of edge", () => {
    expect(lineOf(list.lines, "flats").net.toNumber()).toBeCloseTo(3 * flats.toNumber("ft2"), 9);
    expect(lineOf(list.lines, "corners").net.toNumber()).toBeCloseTo(3 * list.faces.cornerEdges.toNumber("ft"), 9);
  });

  it("elevations add up to the job: the same units, and never fewer packs", () => {
    const byElevation = takeOff(drawn(seed, "by elevation").job);
    const [apart, together] = [lineOf(byElevation.lines, "flats"), lineOf(list.lines, "flats")];
    expect(compare(apart.net as typeof flats, together.net as typeof flats)).toBe(0);
    const more = (apart.packs?.toNumber() ?? 0) - (together.packs?.toNumber() ?? 0);
    expect(more).toBeGreaterThanOrEqual(0);
    expect(more).toBeLessThan(list.elevations.length);
  });

  it("what is bought holds the net and its allowance, and not a pack more", () => {
    for (const { item, net, allowance, pack, packs } of list.lines) {
      if (allowance === undefined || pack === undefined || packs === undefined) continue;
      const [held, wanted] = [pack.to().times(packs.to()), net.to(pack.unit).times(allowance.to("ratio").plus(1))];
      expect([item, held.gte(wanted.minus("1e-20")), held.minus(pack.to()).lt(wanted)]).toEqual([item, true, true]);
    }
  });

  it("one foot more of wall never needs less", () => {
    const [first, ...others] = job.elevations;
    if (first?.shape.kind !== "rectangle" || typeof first.shape.width !== "string") throw new Error("a rectangle");
    const width = `${String(Number.parseInt(first.shape.width, 10) + 1)} ft`;
    const wider = takeOff({ ...job, elevations: [{ ...first, shape: { ...first.shape, width } }, ...others] });
    for (const { item, packs } of wider.lines) {
      const before = lineOf(list.lines, item).packs;
      if (packs !== undefined && before !== undefined) expect(compare(packs, before)).toBeGreaterThanOrEqual(0);
    }
  });
});

it("the jobs are not all alike", () => {
  const faces = new Set(seeds.map((seed) => takeOff(drawn(seed).job).faces.face.toString()));
  expect(faces.size).toBeGreaterThan(30);
});
