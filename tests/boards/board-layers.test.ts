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
    // Behind, end joints at 96 in in the lower course and at 48 in in the upper; over them the other way about: they touch at 48 in up.
    const staggered = { ...flat, stagger: "48 in" } as const;
    expect(stretches(layered([staggered, { ...staggered, start: { across: "48 in", up: "0 in" } }]))).toEqual(["2 level at 0 48, 144 long, 0 off"]);
    // The third layer lies over the first, but the second is between them.
    expect(stretches(layered([upright, { ...upright, start: { across: "16 in", up: "0 in" } }, upright], { leastOffset: "16 in" }))).toEqual([]);
  });

  describe("screws over screws", () => {
    const screwed = { ...upright, screws: { spacing: "8 in" } } as const;
    const shared = (layers: Input["layers"], more: Partial<Input> = {}): readonly (string | undefined)[] => {
      const found = boardLayers(layered(layers, more));
      return [found.screwLinesShared?.toString(), found.screwsTooNear?.toString()];
    };

    it("are all of them in two equal layers", () => {
      // Three boards, four lines each, ceil(95.25 / 8) + 1 = 13 screws a line.
      expect(shared([screwed, screwed])).toEqual(["12", "156"]);
      expect(boardLayers.solve(layered([screwed, screwed])).cautions.join(" ")).toMatch(/right over.*: 156; .*: 12\./);
    });

    it("are those on studs that both layers meet alike, and the near ones within a distance that is given", () => {
      // Layer 1 has lines at 3/8, 16, 32, 47-5/8 | 48-3/8, 64, 80, 95-5/8 | 96-3/8, 112, 128, 143-5/8. Layer 2, begun at 16 in:
      // 3/8, 15-5/8 | 16-3/8, 32, 48, 63-5/8 | 64-3/8, 80, 96, 111-5/8 | 112-3/8, 128, 143-5/8. The same: 3/8, 32, 80, 128,
      // 143-5/8, of 13 screws each. The other eight lie 3/8 in beside one.
      const begun = { ...screwed, start: { across: "16 in", up: "0 in" } } as const;
      expect(shared([screwed, begun])).toEqual(["5", "65"]);
      expect(shared([screwed, begun], { leastScrewOffset: "3/8 in" })).toEqual(["5", "65"]);
      expect(shared([screwed, begun], { leastScrewOffset: "1/2 in" })).toEqual(["5", "169"]);
      expect(boardLayers.solve(layered([screwed, begun], { leastScrewOffset: "1/2 in" })).cautions.join(" ")).toMatch(/Screws, set out as counted, that stand nearer than (0\.5|1\/2) in to one of the layer behind: 169;/);
    });

    it("are few on the same studs where the screws stand at other heights", () => {
      // Flat boards over upright ones: lines of 48 in in two courses, six spaces of 7-7/8 in, against twelve of 7-15/16 in.
      // On the ten lines that are the same (not 48 in), the screw 3/8 in from the foot and the one 3/8 in from the head meet,
      // one in each course; the rest do not: (48 + 7-7/8 k) / 7-15/16 is whole for k = 6 alone.
      expect(shared([screwed, { ...flat, screws: { spacing: "8 in" } }])).toEqual(["20", "20"]);
      // Begun 4 in up in steps of 8 in: 3/8 + 7-15/16 m = 4 + 8 k asks in sixteenths for 127 m - 128 k = 58, which no m from 0 to
      // 12 gives.
      expect(shared([screwed, { ...screwed, screws: { spacing: "8 in", edgeDistance: "4 in" } }])[1]).toBe("0");
    });

    it("are the same seen from the other layer, in whatever order its boards were laid", () => {
      // Ten lines of the upright boards lie over lines of the flat ones, in both courses: not those at 47-5/8 and 48-3/8.
      expect(shared([{ ...flat, screws: { spacing: "8 in" } }, screwed])).toEqual(["10", "20"]);
    });

    it("count a line that lies over the last space of another, or whose only space lies over one", () => {
      // Courses 0 to 48 and 48 to 96 in, of eleven lines each; over them 0 to 44, 44 to 92 and 92 to 96: 44-3/8 is under 47-5/8,
      // and the two screws at 92-3/8 and 95-5/8 lie over the second course.
      const level = { ...flat, screws: { spacing: "8 in" } } as const;
      expect(shared([level, { ...level, start: { across: "0 in", up: "44 in" } }])[0]).toBe("33");
    });

    it("may be a single one, and that is told", () => {
      // One board with a stud in its middle. At 1 in from the edges 1 + 94/12 m, at 2 in 2 + 92/12 k: 47 m - 46 k = 6, which
      // m = k = 6 alone gives, at 48 in.
      const one = (edgeDistance: string): Input["layers"][number] => ({ ...upright, screws: { spacing: "8 in", edgeDistance } });
      const job = layered([one("1 in"), one("2 in")], { wall: { kind: "rectangle", width: "4 ft", height: "8 ft" }, studs: { spacing: "24 in", start: "24 in" } });
      const { answers, cautions } = boardLayers.solve(job);
      expect([answers.screwLinesShared, answers.screwsTooNear].map(String)).toEqual(["1", "1"]);
      expect(cautions.join(" ")).toContain("that stand right over one of the layer behind: 1; lines of screws over a line of it: 1.");
    });

    it("are told only where neighbouring layers have their screws counted", () => {
      expect(shared([screwed, upright])).toEqual([undefined, undefined]);
      expect(shared([screwed, upright, screwed])).toEqual([undefined, undefined]);
      expect(boardLayers(layered([upright, upright]))).not.toHaveProperty("screwLinesShared");
    });
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
