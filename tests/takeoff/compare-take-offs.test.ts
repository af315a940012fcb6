// A change order: what changed, in which lines, and why.
import { describe, expect, it } from "vitest";
import { findChanges, toldChange } from "../../src/takeoff/compare-inputs.js";
import { compareTakeOffs, takeOff } from "../../src/takeoff/index.js";
import { entranceInFeet as before } from "./entrance-job.js";

const front = before.elevations[0]!;

describe("a bay that gets 4 ft longer", () => {
  const elevations = before.elevations.map((one) => (one.name === "bay" ? { ...one, shape: { kind: "rectangle" as const, width: "16 ft", height: "10 ft" } } : one));
  const order = compareTakeOffs({ before, after: { ...before, elevations } });

  it("has one input that is not as it was", () => {
    expect(order.inputs).toEqual([{ at: "elevations.bay.shape.width", change: "changed", before: "12 ft", after: "16 ft" }]);
  });

  it("moves the lines that grow with the face, and says by what", () => {
    expect(order.lines.every(({ change, because }) => change === "changed" && because.join() === "elevations.bay.shape.width")).toBe(true);
    // 40 ft2 more: sheathing (716 + 40)/32 * 1.1 = 25.9875: 26; flat units of the bay (475/4 + 40) * 3 * 1.08 / 40 = 12.86: 13 and not 10
    const more = Object.fromEntries(order.lines.map(({ item, packsMore }) => [item, packsMore?.toString()]));
    expect([more.sheathing, more["flat units"]]).toEqual(["1", "3"]);
    const sheathing = order.lines.find(({ item }) => item === "sheathing");
    expect([sheathing?.netBefore, sheathing?.netAfter].map(String)).toEqual(["22.375", "23.625"]);
  });

  it("leaves corners, sills and sealant as they were", () => {
    for (const item of ["corner units", "sills", "head flashing", "caps", "sealant", "backer rod"]) expect(order.unchanged).toContain(item);
  });

  it("agrees with the two take-offs", () => {
    const [was, is] = [takeOff(before), takeOff({ ...before, elevations })];
    const bought = (list: typeof was, item: string): string | undefined => {
      const line = list.lines.find((one) => one.item === item);
      return (line?.packs ?? (line?.toOrder.dimension === "count" ? line.toOrder : undefined))?.toString();
    };
    for (const { item, packsBefore, packsAfter } of order.lines) expect([item, bought(was, item), bought(is, item)]).toEqual([item, packsBefore?.toString(), packsAfter?.toString()]);
    expect([order.costBefore, order.costAfter]).toEqual([was.cost?.total, is.cost?.total]);
  });
});

it("two changes: each line has the one that moved it", () => {
  const layers = before.layers.map((layer) => (layer.kind === "barrier" ? { ...layer, wetFilm: "20 mil" } : layer));
  const order = compareTakeOffs({ before, after: { ...before, layers, packs: { ...before.packs, caps: { length: "3 ft" } } } });
  expect(order.inputs.map(({ at }) => at)).toEqual(["layers.barrier.wetFilm", "packs.caps.length"]);
  expect(order.lines.map(({ item, because }) => [item, because])).toEqual([["barrier", ["layers.barrier.wetFilm"]], ["caps", ["packs.caps.length"]]]);
});

it("a layer that is put in with its pack: it is added, though neither makes a job by itself", () => {
  const mat = { kind: "sheet goods" as const, name: "mat", sheetWidth: "39 in", sideLap: "3 in", endLap: "4 in" };
  const order = compareTakeOffs({ before, after: { ...before, layers: [...before.layers, mat], packs: { ...before.packs, mat: { length: "50 ft" } }, allowances: { ...before.allowances, mat: { waste: "5 %" } } } });
  expect(order.inputs.map(({ at, change }) => [at, change])).toEqual([["layers.mat", "added"], ["packs.mat", "added"], ["allowances.mat", "added"]]);
  expect(order.lines.map(({ item, change, packsBefore }) => [item, change, packsBefore])).toEqual([["mat", "added", undefined]]);
});

it("an elevation that falls away takes its openings with it", () => {
  const order = compareTakeOffs({ before: { ...before, elevations: [...before.elevations, { ...front, name: "back", outsideCorners: [], insideCorners: [] }] }, after: before });
  expect(order.inputs.map(({ at, change }) => [at, change])).toEqual([["elevations.back", "removed"]]);
  expect(order.lines.every(({ because }) => because.join() === "elevations.back")).toBe(true);
  expect(order.lines.every(({ packsMore }) => packsMore === undefined || packsMore.toNumber() <= 0)).toBe(true);
  expect(order.lines.find(({ item }) => item === "sills")?.packsMore?.toString()).toBe("-3");
});

it("the same sizes in other units change nothing", () => {
  const elevations = before.elevations.map((one) => (one.name === "bay" ? { ...one, shape: { kind: "rectangle" as const, width: "144 in", height: "3.048 m" } } : one));
  expect(compareTakeOffs({ before, after: { ...before, elevations } })).toMatchObject({ inputs: [], lines: [] });
});

it("two sizes of which one makes no job by itself have both moved the line", () => {
  // A wall of 8 ft x 8 ft less 4 x 4: 48/32 boards; of 16 ft less 10 x 4: 88/32. The opening of 10 ft alone does not go into 8 ft.
  const wall = (width: string, opening: string): typeof before => ({
    measuredTo: "backing",
    elevations: [{ name: "north", shape: { kind: "rectangle", width, height: "8 ft" }, openings: [{ shape: { kind: "rectangle", width: opening, height: "4 ft" }, returnDepth: "0 in", returnUnits: "flat", toBase: false }], outsideCorners: [] }],
    layers: [{ kind: "foam board", name: "foam", boardWidth: "4 ft", boardHeight: "8 ft" }],
    packs: {},
    allowances: { foam: { waste: "0 %" } },
  });
  const [line] = compareTakeOffs({ before: wall("8 ft", "4 ft"), after: wall("16 ft", "10 ft") }).lines;
  expect([line?.netBefore, line?.netAfter].map(String)).toEqual(["1.5", "2.75"]);
  expect(line?.because).toEqual(["elevations.north.shape.width", "elevations.north.openings[0].shape.width"]);
});

it("a job that had no prices has no cost before", () => {
  const unpriced = Object.fromEntries(Object.entries(before).filter(([key]) => key !== "prices")) as typeof before;
  const order = compareTakeOffs({ before: unpriced, after: before });
  expect(order).not.toHaveProperty("costBefore");
  expect(order.costAfter).toBe(takeOff(before).cost?.total);
  expect(compareTakeOffs({ before, after: unpriced })).not.toHaveProperty("costAfter");
});

it("tells lists by their members, and of something long the first 197 letters", () => {
  const after = (was: unknown, is: unknown): string | undefined => findChanges({ x: was }, { x: is }).map(toldChange)[0]?.after;
  expect(after(undefined, ["sills", "heads"])).toBe("sills, heads");
  expect(after(undefined, { kind: "trim", along: ["sills", "caps"] })).toBe("kind trim, along sills, caps");
  expect(after(undefined, { name: "x".repeat(195) })).toBe(`name ${"x".repeat(195)}`);
  expect(after(undefined, { name: "x".repeat(196) })).toBe(`name ${"x".repeat(192)}…`);
  expect(after("a", "b")).toBe("b");
});

it("a size that was not told before is added, and one that is told no more is removed", () => {
  const withLap = (lap: object): typeof before => ({ ...before, layers: before.layers.map((layer) => (layer.kind === "ledger" ? { kind: "ledger", name: layer.name, ...lap } : layer)) });
  const changes = (one: object, other: object): readonly string[] => compareTakeOffs({ before: withLap(one), after: withLap(other) }).inputs.map(({ at, change, before: was, after: is }) => `${at} ${change} ${String(was)} ${String(is)}`);
  expect(changes({}, { lap: "2 in" })).toEqual(["layers.ledger.lap added undefined 2 in"]);
  expect(changes({ lap: "2 in" }, {})).toEqual(["layers.ledger.lap removed 2 in undefined"]);
  expect(changes({ lap: undefined }, {})).toEqual([]);
});

it("tells what is put in by its parts, without those that are left out", () => {
  const rod = { kind: "ledger" as const, name: "second ledger", lap: undefined };
  const order = compareTakeOffs({ before, after: { ...before, columns: [...(before.columns ?? []), { name: "pier", width: "2 ft", depth: "1 ft", height: "8 ft", count: 1 }] } });
  expect(order.inputs).toEqual([{ at: "columns.pier", change: "added", after: "name pier, width 2 ft, depth 1 ft, height 8 ft, count 1" }]);
  expect(findChanges({ layers: [] }, { layers: [rod] }).map(toldChange)).toEqual([{ at: "layers.second ledger", change: "added", after: "kind ledger, name second ledger" }]);
});

it("the parts of a list are told by their names where each has its own, else by their places", () => {
  const paths = (was: unknown, is: unknown): readonly string[] => findChanges(was, is).map(({ path }) => path.join("."));
  expect(paths([{ name: "a", n: 1 }, { name: "b", n: 2 }], [{ name: "b", n: 3 }, { name: "a", n: 1 }])).toEqual(["b.n"]);
  expect(paths([{ kind: "studs", n: 1 }], [{ kind: "studs", n: 2 }])).toEqual(["studs.n"]);
  expect(paths([{ name: "a", n: 1 }, { n: 2 }], [{ name: "b", n: 1 }, { n: 3 }])).toEqual(["0.name", "1.n"]);
  expect(paths([{ name: "a", n: 1 }, { name: "a", n: 2 }], [{ name: "a", n: 1 }, { name: "a", n: 3 }])).toEqual(["1.n"]);
  expect(paths(["base", "caps"], ["base", "sills", "caps"])).toEqual(["1", "2"]);
});

it("a job that is wrong is named: before or after", () => {
  const tried = compareTakeOffs.try({ before, after: { ...before, columns: [{ name: "columns", width: "2", depth: "1 ft", height: "8 ft" }] } });
  expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["after.columns.0.width"]);
  const larger = { ...before, elevations: [{ ...front, shape: { kind: "rectangle" as const, width: "5 ft", height: "10 ft" } }, ...before.elevations.slice(1)] };
  const refused = compareTakeOffs.try({ before: larger, after: before });
  expect(refused.ok ? [] : refused.problems.map(({ path }) => path.slice(0, 4).join("."))).toContain("before.elevations.0.openings");
});
