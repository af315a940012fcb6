import { describe, expect, it } from "vitest";
import { boardLayers } from "../../src/boards/board-layers.js";
import { boardLayout } from "../../src/boards/board-layout.js";

type Input = Parameters<typeof boardLayers>[0];

const upright = { board: { width: "4 ft", length: "8 ft" }, orientation: "upright", stagger: "0 in" } as const;
const flat = { ...upright, orientation: "flat" } as const;

function layered(layers: Input["layers"], more: Partial<Input> = {}): Input {
  return { wall: { kind: "rectangle", width: "12 ft", height: "8 ft" }, openings: [], studs: { spacing: "16 in", start: "16 in" }, edgesBacked: false, reuseOffcuts: false, layers, leastOffset: "16 in", ...more };
}

const stretches = (input: Input): readonly string[] =>
  boardLayers(input).closeJoints.map(({ layer, runs, left, bottom, length, offset }) => `${String(layer)} ${runs} at ${String(left.toNumber("in"))} ${String(bottom.toNumber("in"))}, ${String(length.toNumber("in"))} long, ${String(offset.toNumber("in"))} off`);

describe("boardLayers", () => {
  it("finds two equal layers joint over joint", () => {
    // 12 ft x 8 ft in three boards stood upright: joints at 48 and 96 in, 96 in high each, in both layers.
    const layers = boardLayers(layered([upright, upright]));
    expect([layers.closeLength.toString(), layers.jointsOverJoints.toString()]).toEqual(["16 ft", "16 ft"]);
    expect(stretches(layered([upright, upright]))).toEqual(["2 upright at 48 0, 96 long, 0 off", "2 upright at 96 0, 96 long, 0 off"]);
    expect(boardLayers.solve(layered([upright, upright])).cautions.join(" ")).toContain("16 ft of joints lie nearer than 16 in");
  });

  it("takes an offset of just the least as enough, and anything under it as too little", () => {
    const shifted = (across: string): Input => layered([upright, { ...upright, start: { across, up: "0 in" } }]);
    // Begun 16 in from the left, the joints of layer 2 lie at 16, 64 and 112 in, 16 in from those at 48 and 96.
    expect(stretches(shifted("16 in"))).toEqual([]);
    // Begun at 15: 15, 63, 111, each 15 in from the next. Begun at 33: 33, 81, 129, and 33 lies 15 in from 48.
    expect(stretches(shifted("15 in"))).toEqual(["2 upright at 63 0, 96 long, 15 off", "2 upright at 111 0, 96 long, 15 off"]);
    expect(stretches(shifted("33 in"))).toEqual(["2 upright at 33 0, 96 long, 15 off", "2 upright at 81 0, 96 long, 15 off"]);
    expect(stretches({ ...shifted("15 in"), leastOffset: "15 in" })).toEqual([]);
  });

  it("looks at the stretch that joints share, level and upright, and at the layer just behind only", () => {
    // Flat boards behind: a level joint at 48 in, end joints at 96 in, one a course, 48 in high. Upright boards over them:
    // joints at 48 and 96 in, 96 in high, and no level one.
    expect(stretches(layered([flat, upright]))).toEqual(["2 upright at 96 0, 48 long, 0 off", "2 upright at 96 48, 48 long, 0 off"]);
    // Begun 48 in from the left and 24 in up: level joints at 24 and 72 in, an end joint at 48.
    expect(stretches(layered([flat, { ...flat, start: { across: "48 in", up: "24 in" } }]))).toEqual([]);
    expect(stretches(layered([flat, { ...flat, start: { across: "48 in", up: "8 in" } }]))).toEqual(["2 level at 0 56, 144 long, 8 off"]);
    expect(stretches(layered([flat, { ...flat, start: { across: "48 in", up: "0 in" } }]))).toEqual(["2 level at 0 48, 144 long, 0 off"]);
    // The third layer lies over the first, but the second is between them.
    expect(stretches(layered([upright, { ...upright, start: { across: "16 in", up: "0 in" } }, upright], { leastOffset: "16 in" }))).toEqual([]);
  });

  it("lays each layer out as it is laid out alone", () => {
    const [first, second] = [{ ...upright, screws: { spacing: "8 in" } }, { ...flat, stagger: "48 in" }];
    const input = layered([first, second], { openings: [{ shape: { kind: "rectangle", width: "3 ft", height: "3 ft" }, left: "40 in", bottom: "30 in" }] });
    const { wall, openings, studs, edgesBacked, reuseOffcuts } = input;
    const common = { wall, openings, studs, edgesBacked, reuseOffcuts };
    const together = boardLayers(input).layers;
    expect(JSON.stringify(together)).toBe(JSON.stringify([boardLayout({ ...common, ...first }), boardLayout({ ...common, ...second })]));
  });

  it("tells what is wrong with the wall once, and what is wrong with a layer under it", () => {
    const bad = layered([{ ...upright, stagger: "9 ft" }, { ...upright, board: { width: "8 ft", length: "4 ft" } }], { openings: [{ shape: { kind: "rectangle", width: "20 ft", height: "1 ft" }, left: "0 ft", bottom: "0 ft" }] });
    const tried = boardLayers.try(bad);
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["openings.0", "layers.0.stagger", "layers.1.board.width"]);
    const none = boardLayers.try({ ...layered([]), leastOffset: "0 in" });
    expect(none.ok ? [] : none.problems.map(({ path }) => path.join("."))).toEqual(["leastOffset"]);
    const five = boardLayers.try(layered([upright, upright, upright, upright, upright]));
    expect(five.ok ? [] : five.problems.map(({ path }) => path.join("."))).toEqual(["layers"]);
    expect(boardLayers.try(layered([])).ok).toBe(false);
  });
});
