import { describe, expect, it } from "vitest";
import { boardLayout } from "../../src/boards/board-layout.js";
import { gable } from "../../src/shapes/gable.js";
import { vector } from "../support/vectors.js";

type Input = Parameters<typeof boardLayout>[0];

const threeByFive = { width: "3 ft", length: "5 ft" };
const fourByEight = { width: "4 ft", length: "8 ft" };
const at16 = { spacing: "16 in", start: "16 in" };

function wall(width: string, height: string, more: Partial<Input> = {}): Input {
  return {
    wall: { kind: "rectangle", width, height }, openings: [], board: threeByFive, orientation: "flat", stagger: "0 in", studs: at16, edgesBacked: true, reuseOffcuts: false,
    ...more,
  };
}

function opening(left: string, bottom: string, width: string, height: string): Input["openings"][number] {
  return { shape: { kind: "rectangle", width, height }, left, bottom };
}

/** Each board as `left bottom width x height` in inches, and what it is cut from. */
function drawn(layout: ReturnType<typeof boardLayout>): readonly string[] {
  const inches = (length: { toNumber: (unit: "in") => number }): string => String(length.toNumber("in"));
  return layout.boards.map(({ left, bottom, width, height, kind, board, fromOffcut, cutouts }) => {
    const cut = cutouts.map((one) => ` less ${inches(one.left)} ${inches(one.bottom)} ${inches(one.width)}x${inches(one.height)}`).join("");
    return `${inches(left)} ${inches(bottom)} ${inches(width)}x${inches(height)}${cut} ${kind} ${fromOffcut ? "offcut of " : ""}${String(board)}`;
  });
}

const inInches = (...lengths: readonly { toNumber: (unit: "in") => number }[]): string => lengths.map((length) => String(length.toNumber("in"))).join(" ");
/** Each joint as `level left bottom length`, with whether it is on a stud; each leftover as `board left bottom width height`. */
const joints = (layout: ReturnType<typeof boardLayout>): readonly string[] => layout.joints.map(({ runs, left, bottom, length, onStud }) => `${runs} ${inInches(left, bottom, length)}${onStud === undefined ? "" : onStud ? " on stud" : " off stud"}`);
const leftovers = (layout: ReturnType<typeof boardLayout>): readonly string[] => layout.offcuts.map(({ board, left, bottom, width, height }) => `${String(board)}: ${inInches(left, bottom, width, height)}`);

function problemsOf(input: unknown): readonly (readonly string[])[] {
  const tried = boardLayout.try(input);
  return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")]);
}

describe("boardLayout, drawn by hand", () => {
  it("stands five boards on a wall of 20 ft x 8 ft, with the screws counted in the textbook's disagreement", () => {
    const layout = boardLayout(wall("20 ft", "8 ft", { board: fourByEight, orientation: "upright", edgesBacked: false, screws: { spacing: "8 in" } }));
    expect(drawn(layout)).toEqual(["0 0 48x96 whole 1", "48 0 48x96 whole 2", "96 0 48x96 whole 3", "144 0 48x96 whole 4", "192 0 48x96 whole 5"]);
    const row = vector("count-wall-20x8-boards-vs-rule");
    expect(layout.boardsUsed.toString()).toBe(row.inputs.boards);
    expect(layout.boards.map(({ screws }) => String(screws))).toEqual(Array(5).fill(row.inputs.perBoard));
    // 5 boards x 4 studs x 13 screws; the rule of 1,000 screws to 1,000 ft2 would have 160.
    expect(layout.screws?.toString()).toBe(row.expected.exact);
    // Four joints of 8 ft, all on studs: 48, 96, 144 and 192 in are 3, 6, 9 and 12 times 16 in.
    expect([layout.uprightJoints, layout.levelJoints, layout.jointsOffStuds].map(String)).toEqual(["32 ft", "0 ft", "0 ft"]);
    expect(layout.studs).toHaveLength(16);
  });

  //  72 ┌─────┬───────────┬─────┐
  //     │ 30  │    60     │ 30  │
  //  36 ├─────┴─────┬─────┴─────┤
  //     │    60     │    60     │
  //   0 └───────────┴───────────┘
  it("staggers flat boards, and cuts both ends of the upper course from one board", () => {
    const staggered = wall("10 ft", "6 ft", { stagger: "30 in" });
    const layout = boardLayout(staggered);
    expect(drawn(layout)).toEqual(["0 0 60x36 whole 1", "60 0 60x36 whole 2", "0 36 30x36 cut 3", "30 36 60x36 whole 4", "90 36 30x36 cut 5"]);
    // One level joint of 10 ft; three upright ones of 3 ft, at 60, 30 and 90 in: no multiple of 16.
    expect([layout.levelJoints, layout.uprightJoints, layout.jointLength, layout.jointsOffStuds].map(String)).toEqual(["10 ft", "9 ft", "19 ft", "9 ft"]);
    // Each upright joint has one end on the level one, the other at the edge of the wall.
    expect(layout.overlaps.toString()).toBe("3");
    expect(layout.boards.map(({ leftOnStud, rightOnStud }) => [leftOnStud, rightOnStud])).toEqual([[true, false], [false, true], [true, false], [false, false], [false, true]]);
    expect(layout.boardsUsed.toString()).toBe("5");
    expect(joints(layout)).toEqual(["upright 60 0 36 off stud", "level 0 36 120", "upright 30 36 36 off stud", "upright 90 36 36 off stud"]);

    const reused = boardLayout({ ...staggered, reuseOffcuts: true });
    expect(drawn(reused).slice(2)).toEqual(["0 36 30x36 cut 3", "30 36 60x36 whole 4", "90 36 30x36 cut offcut of 3"]);
    expect([reused.boardsUsed.toString(), reused.boardsByArea.toString(), reused.offcuts.length]).toEqual(["4", "4", 0]);
    expect([reused.boards[4]?.onBoard.across.toString(), reused.boards[4]?.onBoard.up.toString()]).toEqual(["30 in", "0 in"]);
  });

  it("lets both stretches of a joint that runs through end on the level joint between them", () => {
    const layout = boardLayout(wall("10 ft", "6 ft"));
    expect(layout.boards.map(({ kind }) => kind)).toEqual(["whole", "whole", "whole", "whole"]);
    // The joint up at 60 in is drawn a course at a time: both stretches end on the level joint.
    expect(layout.overlaps.toString()).toBe("2");
  });

  //  96 ┌────┬────────────┬────┐
  //     │    │  above 12  │    │
  //  84 │    ├────────────┤    │     boards 4 x 8 upright; window 48 in wide over the whole
  //     │    │   window   │    │     second board, from 36 in to 84 in
  //  36 │    ├────────────┤    │
  //     │    │  below 36  │    │
  //   0 └────┴────────────┴────┘
  it("takes the pieces above and below a window from one board", () => {
    const layout = boardLayout(wall("12 ft", "8 ft", { board: fourByEight, orientation: "upright", openings: [opening("48 in", "36 in", "48 in", "48 in")] }));
    expect(drawn(layout)).toEqual(["0 0 48x96 whole 1", "48 0 48x36 cut 2", "48 84 48x12 cut 2", "96 0 48x96 whole 3"]);
    // Joints at 48 and 96 in, each 96 - 48 in long: no joint along the window.
    expect([layout.uprightJoints.toString(), layout.levelJoints.toString(), layout.narrowest.toString()]).toEqual(["8 ft", "0 ft", "12 in"]);
    // The joints end at all four corners of the window.
    expect(layout.jointsAtCorners.toString()).toBe("4");
    expect(layout.offcuts.map(({ board, left, bottom, width, height }) => [board, ...[left, bottom, width, height].map(String)])).toEqual([[2, "0 in", "36 in", "48 in", "48 in"]]);
    expect(layout.area.toString()).toBe("80 ft2");
  });

  it("cuts round a window and a door, and puts studs at their sides", () => {
    // A window within one board; a door at the foot, across the joint at 96 in.
    const layout = boardLayout(wall("12 ft", "8 ft", { board: fourByEight, orientation: "upright", openings: [opening("10 in", "40 in", "20 in", "30 in"), opening("80 in", "0 in", "36 in", "80 in")] }));
    expect(drawn(layout)).toEqual(["0 0 48x96 less 10 40 20x30 cut 1", "48 0 48x96 less 80 0 16x80 cut 2", "96 0 48x96 less 96 0 20x80 cut 3"]);
    const places = layout.studs.map(({ across, stands }) => `${across.toString()} ${stands}`);
    expect(places).toContain("10 in opening");
    expect(places).toContain("30 in opening");
    expect(places).toContain("116 in opening");
    // 80 in is 5 x 16: a stud of the spacing stands there already.
    expect(places).toContain("80 in spacing");
    expect(places).toEqual(["0 in end", "10 in opening", "16 in spacing", "30 in opening", "32 in spacing", "48 in spacing", "64 in spacing", "80 in spacing", "96 in spacing", "112 in spacing", "116 in opening", "128 in spacing", "144 in end"]);
    // Joint at 48 in: 8 ft. Joint at 96 in: over the door only, 96 - 80 = 16 in.
    expect(layout.uprightJoints.to("in").toString()).toBe("112");
    expect(joints(layout)).toEqual(["upright 48 0 96 on stud", "upright 96 80 16 on stud"]);
  });

  it("sets out the screws of every stud: from edge distance to edge distance, in from an edge with no board beyond", () => {
    const screwed = { board: fourByEight, orientation: "upright", edgesBacked: false, screws: { spacing: "8 in" } } as const;
    const linesOf = (board: ReturnType<typeof boardLayout>["boards"][number] | undefined): readonly string[] => (board?.screwLines ?? []).map(({ across, bottom, spacing, screws }) => `${inInches(across, bottom)}: ${String(screws)} at ${inInches(spacing)}`);
    const openings = [opening("10 in", "40 in", "20 in", "30 in"), opening("80 in", "0 in", "36 in", "80 in")];
    const [first, second] = boardLayout(wall("12 ft", "8 ft", { ...screwed, openings })).boards;
    // 96 in less 3/8 in at either end is 95-1/4 in, 12 spaces. Below the window 39-1/4 in, 5 spaces of 7.85; above it 25-1/4, 4.
    // Of the screws at 0.375, 8.3125 and so on up a side of the window 5 lie below it and 4 above; the 4 from 40.0625 to 63.875 in stand in
    // from the cut edge, where there is board on one side only.
    expect(linesOf(first)).toEqual([
      "0.375 0.375: 13 at 7.9375",
      "10 0.375: 5 at 7.9375", "9.625 40.0625: 4 at 7.9375", "10 71.8125: 4 at 7.9375",
      "16 0.375: 6 at 7.85", "16 70.375: 5 at 6.3125",
      "30 0.375: 5 at 7.9375", "30.375 40.0625: 4 at 7.9375", "30 71.8125: 4 at 7.9375",
      "32 0.375: 13 at 7.9375", "47.625 0.375: 13 at 7.9375",
    ]);
    // At 80 in 11 screws beside the door, up to 79.75 in, and 2 over it. At 96 in over the door only: 15-1/4 in, 2 spaces.
    expect(linesOf(second)).toEqual(["48.375 0.375: 13 at 7.9375", "64 0.375: 13 at 7.9375", "79.625 0.375: 11 at 7.9375", "80 87.6875: 2 at 7.9375", "95.625 80.375: 3 at 7.625"]);
    expect([first?.screws, second?.screws]).toEqual([76, 42]);
    // A screw right at the height of the sill stands in as well: over it there is board on one side only.
    const [atSill] = boardLayout(wall("12 ft", "8 ft", { ...screwed, openings: [opening("10 in", "40-1/16 in", "20 in", "30 in")] })).boards;
    expect(linesOf(atSill).slice(1, 3)).toEqual(["10 0.375: 5 at 7.9375", "9.625 40.0625: 4 at 7.9375"]);
    // Beside an opening as high as the wall the board ends at 80 in.
    const beside = boardLayout(wall("12 ft", "8 ft", { ...screwed, openings: [opening("80 in", "0 in", "16 in", "8 ft")] })).boards[1];
    expect(linesOf(beside).map((line) => line.split(" ")[0])).toEqual(["48.375", "64", "79.625"]);
  });

  it("cuts from the smallest leftover that will do, and leaves the larger part whole", () => {
    // Courses 0 to 16, 16 to 52, 52 to 72 in, ends at 20 and 80 in; every board is 60 x 36.
    const job = wall("10 ft", "6 ft", { start: { across: "20 in", up: "16 in" } });
    // 20 x 16 off a board leaves 40 x 36 and 20 x 20, larger than 60 x 20 and 40 x 16. 40 x 16 leaves 60 x 20 and 20 x 16,
    // larger than 40 x 20 and 20 x 36.
    expect(leftovers(boardLayout(job)).slice(0, 5)).toEqual(["1: 20 0 40 36", "1: 0 16 20 20", "2: 0 16 60 20", "3: 40 0 20 16", "3: 0 16 60 20"]);
    const reused = boardLayout({ ...job, reuseOffcuts: true });
    // The 40 x 16 of the third place comes from the 60 x 20 of board 2, not from the 40 x 36 of board 1; so that one holds the
    // 20 x 36 of the fourth place. The 20 x 20 of the seventh place is the 20 x 20 of board 1.
    expect(drawn(reused)).toEqual([
      "0 0 20x16 cut 1", "20 0 60x16 cut 2", "80 0 40x16 cut offcut of 2", "0 16 20x36 cut offcut of 1", "20 16 60x36 whole 3", "80 16 40x36 cut 4", "0 52 20x20 cut offcut of 1", "20 52 60x20 cut 5", "80 52 40x20 cut 6",
    ]);
    expect(reused.boards.map(({ onBoard: { across, up } }) => inInches(across, up))).toEqual(["0 0", "0 0", "0 16", "20 0", "0 0", "0 0", "0 16", "0 0", "0 0"]);
    expect(leftovers(reused)).toEqual(["1: 40 0 20 36", "2: 40 16 20 20", "2: 0 32 40 4", "4: 40 0 20 36", "5: 0 20 60 16", "6: 40 0 20 20", "6: 0 20 60 16"]);
    expect(reused.boardsUsed.toString()).toBe("6");
    expect(reused.boards.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });

  it("keeps pieces apart that touch at a point only", () => {
    // In one board of 48 in x 96 in, two openings meet at its middle, corner to corner.
    const layout = boardLayout(wall("4 ft", "8 ft", { board: fourByEight, orientation: "upright", openings: [opening("0 in", "0 in", "24 in", "48 in"), opening("24 in", "48 in", "24 in", "48 in")] }));
    expect(drawn(layout)).toEqual(["24 0 24x48 cut 1", "0 48 24x48 cut 1"]);
    expect(layout.jointLength.toString()).toBe("0 ft");
  });

  it("takes tape over tape only where a joint reaches another, not at the sill of a window", () => {
    // The level joint at 36 in stops at the window, 40 to 80 in; the upright one at 60 in comes up to the sill.
    const layout = boardLayout(wall("10 ft", "6 ft", { openings: [opening("40 in", "36 in", "40 in", "24 in")] }));
    expect(joints(layout)).toEqual(["upright 60 0 36 off stud", "level 0 36 40", "level 80 36 40", "upright 60 60 12 off stud"]);
    expect([layout.overlaps, layout.jointsAtCorners].map(String)).toEqual(["0", "2"]);
    // Boards of 40 in, a stud at either side of the window: the upright joints come up to the corners of the sill, where the level ones end: each of the four ends meets
    // another joint. Over the window two more begin at its corners.
    const cornered = boardLayout(wall("10 ft", "6 ft", { board: { width: "36 in", length: "40 in" }, openings: [opening("40 in", "36 in", "40 in", "24 in")] }));
    expect(joints(cornered)).toEqual(["upright 40 0 36 on stud", "upright 80 0 36 on stud", "level 0 36 40", "level 80 36 40", "upright 40 60 12 on stud", "upright 80 60 12 on stud"]);
    expect([cornered.overlaps, cornered.jointsAtCorners].map(String)).toEqual(["4", "6"]);
  });

  it("shifts every other course, and tells the screws of a board as it lies", () => {
    const three = boardLayout.solve(wall("10 ft", "9 ft", { stagger: "30 in", screws: { spacing: "8 in" } }));
    expect(drawn(three.answers).slice(5)).toEqual(["0 72 60x36 whole 6", "60 72 60x36 whole 7"]);
    // The board lies flat: 36 in of it go along the studs.
    const screws = three.parts.find(({ id }) => id === "fasteners.board-screws");
    expect(String(screws?.given.find(({ name }) => name === "alongStuds")?.value)).toBe("3 ft");
  });

  it("tells where on its board each of several pieces lies, and cuts a stepped hole out without losing a part", () => {
    // The upper left board, 0 to 60 and 36 to 72 in, is cut through by an opening from 20 to 40 in.
    const through = boardLayout(wall("10 ft", "6 ft", { openings: [opening("20 in", "36 in", "20 in", "36 in")] }));
    expect(through.boards.filter(({ board }) => board === 3).map(({ onBoard: { across, up } }) => inInches(across, up))).toEqual(["0 0", "40 0"]);
    // The upper right one, 60 to 120 in, from 80 to 100 in.
    const right = boardLayout(wall("10 ft", "6 ft", { openings: [opening("80 in", "36 in", "20 in", "36 in")] }));
    expect(right.boards.filter(({ board }) => board === 4).map(({ onBoard: { across, up } }) => inInches(across, up))).toEqual(["0 0", "40 0"]);
    const stepped = boardLayout(wall("4 ft", "8 ft", { board: fourByEight, orientation: "upright", openings: [opening("0 in", "0 in", "10 in", "20 in"), opening("0 in", "20 in", "24 in", "20 in")] }));
    expect(drawn(stepped)).toEqual(["0 0 48x96 less 0 0 10x40 less 10 20 14x20 cut 1"]);
    // 48 x 96 less 10 x 20 and 24 x 20.
    expect(stepped.area.to("in2").toString()).toBe("3928");
  });

  it("cuts out another piece that lies in the crook of a piece", () => {
    // Two openings make an L from the left edge to the foot and shut off the lower left corner of the board.
    const layout = boardLayout(wall("4 ft", "8 ft", { board: fourByEight, orientation: "upright", openings: [opening("0 in", "40 in", "30 in", "6 in"), opening("24 in", "0 in", "6 in", "40 in")] }));
    const inner = layout.boards.find(({ width }) => width.toString() === "24 in");
    const outer = layout.boards.find(({ width }) => width.toString() === "48 in");
    expect([inner?.height.toString(), inner?.area.to("in2").toString()]).toEqual(["40 in", "960"]);
    // 48 x 96 less 30 x 46
    expect([outer?.height.toString(), outer?.area.to("in2").toString()]).toEqual(["96 in", "3228"]);
    expect(outer?.cutouts.map(({ width, height }) => `${width.toString()} ${height.toString()}`)).toEqual(["30 in 46 in"]);
    expect(layout.boardsUsed.toString()).toBe("1");
  });

  it("begins where it is told, and rips boards that are higher than the wall", () => {
    const shifted = boardLayout(wall("10 ft", "6 ft", { start: { across: "20 in", up: "16 in" } }));
    // Courses 0 to 16, 16 to 52, 52 to 72; ends at 20 and 80 in.
    expect(drawn(shifted).slice(0, 4)).toEqual(["0 0 20x16 cut 1", "20 0 60x16 cut 2", "80 0 40x16 cut 3", "0 16 20x36 cut 4"]);
    const low = boardLayout(wall("10 ft", "2 ft", { board: fourByEight }));
    expect(drawn(low)).toEqual(["0 0 96x24 cut 1", "96 0 24x24 cut 2"]);
    expect(low.jointLength.toString()).toBe("2 ft");
  });

  it("is shown in metric where the board is, and comes out alike", () => {
    const layout = boardLayout(wall("6 m", "2.4 m", { board: { width: "1200 mm", length: "2400 mm" }, orientation: "upright", studs: { spacing: "600 mm", start: "600 mm" }, screws: { spacing: "200 mm", edgeDistance: "10 mm" } }));
    expect([layout.boardsUsed, layout.uprightJoints, layout.area].map(String)).toEqual(["5", "9.6 m", "14.4 m2"]);
    // A line: (2400 - 20) / 200 = 11.9, so 12 spaces and 13 screws; three lines a board.
    expect(layout.screws?.toString()).toBe("195");
  });
});

describe("boardLayout under raking edges", () => {
  //   48        ╱│╲
  //           ╱  │  ╲        two boards of 4 ft x 4 ft, each cut to half
  //    0    ╱────┴────╲
  it("cuts a gable of 8 ft x 4 ft from two square boards", () => {
    const layout = boardLayout({ ...wall("1 ft", "1 ft", { board: { width: "4 ft", length: "4 ft" }, screws: { spacing: "8 in" } }), wall: { kind: "gable", width: "8 ft", height: "4 ft" } });
    expect(drawn(layout)).toEqual(["0 0 48x48 cut 1", "48 0 48x48 cut 2"]);
    expect(layout.boards[0]?.corners.map(({ across, up }) => `${across.toString()} ${up.toString()}`)).toEqual(["0 in 0 in", "48 in 0 in", "48 in 48 in"]);
    expect([layout.area, layout.uprightJoints, layout.jointsOffStuds].map(String)).toEqual(["16 ft2", "4 ft", "0 ft"]);
    // Lines at 16, 32 and 48 in are as high: ceil(15.25 / 8) + 1 = 3, ceil(31.25 / 8) + 1 = 5, ceil(47.25 / 8) + 1 = 7;
    // none at the point. 15 a board.
    expect(layout.boards.map(({ screws }) => screws)).toEqual([15, 15]);
    expect(layout.boards.map(({ leftOnStud, rightOnStud }) => [leftOnStud, rightOnStud])).toEqual([[true, true], [true, true]]);
  });

  it("says that no row of screws is counted along a raking edge, and says nothing of it where there is none", () => {
    const screws = { screws: { spacing: "8 in" } } as const;
    const told = (input: Input): boolean => boardLayout.solve(input).cautions.some((text) => text.includes("fasteners.raking-screws"));
    const gable = { kind: "gable", width: "8 ft", height: "4 ft" } as const;
    expect(told({ ...wall("1 ft", "1 ft", screws), wall: gable })).toBe(true);
    expect(told({ ...wall("1 ft", "1 ft"), wall: gable })).toBe(false);
    expect(told(wall("10 ft", "6 ft", screws))).toBe(false);
  });

  it("closes the areas of a trapezoid and of the textbook's gable end (Pearson, Ex. 13-17)", () => {
    // 12 ft x (4 + 8) / 2 ft
    const shed = boardLayout({ ...wall("1 ft", "1 ft"), wall: { kind: "trapezoid", width: "12 ft", leftHeight: "4 ft", rightHeight: "8 ft" } });
    expect(shed.area.toString()).toBe("72 ft2");
    expect(vector("textbook-sheathing-40").inputs.gables).toBe("0.5*24*3*2");
    const gableEnd = boardLayout({ ...wall("1 ft", "1 ft", { board: fourByEight }), wall: { kind: "gable", width: "24 ft", height: "3 ft" } });
    expect(gableEnd.area.toString()).toBe("36 ft2");
    // By area two boards do for it; laid out, three places across, the outer ones cut to a triangle.
    expect([gableEnd.boardsByArea.toString(), gableEnd.boardsUsed.toString()]).toEqual(["2", "3"]);
  });

  it("takes a polygon from anywhere on the sheet, either way round", () => {
    const corners = [{ x: "100 ft", y: "50 ft" }, { x: "110 ft", y: "50 ft" }, { x: "110 ft", y: "56 ft" }, { x: "105 ft", y: "59 ft" }, { x: "100 ft", y: "56 ft" }];
    const house = { ...wall("1 ft", "1 ft", { stagger: "30 in", openings: [opening("4 ft", "3 ft", "2 ft", "4 ft")] }) };
    const [onward, back] = [corners, [...corners].reverse()].map((points) => boardLayout({ ...house, wall: { kind: "polygon", points } }));
    // 10 x 6 + 10 x 3 / 2 - 8
    expect(onward?.area.toString()).toBe("67 ft2");
    expect(back === undefined ? [] : drawn(back)).toEqual(onward === undefined ? undefined : drawn(onward));
  });

  it("takes a corner in the middle of a straight edge", () => {
    const points = [["0 ft", "0 ft"], ["5 ft", "0 ft"], ["10 ft", "0 ft"], ["10 ft", "6 ft"], ["0 ft", "6 ft"]].map(([x, y]) => ({ x, y })) as { x: string; y: string }[];
    expect(drawn(boardLayout({ ...wall("1 ft", "1 ft"), wall: { kind: "polygon", points } }))).toEqual(drawn(boardLayout(wall("10 ft", "6 ft"))));
  });

  it("parts a piece where a raking edge meets the corner of an opening", () => {
    // Over the opening the gable of 45 degrees comes down to its upper left corner (24, 24): nothing is left over the corner.
    const gable = { ...wall("1 ft", "1 ft", { board: { width: "4 ft", length: "4 ft" }, openings: [opening("24 in", "0 in", "24 in", "24 in")] }), wall: { kind: "gable", width: "8 ft", height: "4 ft" } } as Input;
    const pieces = drawn(boardLayout(gable));
    expect(pieces).toEqual(["0 0 24x24 cut 1", "24 24 24x24 cut 1", "48 0 48x48 cut 2"]);
  });
});

describe("boardLayout and what it tells", () => {
  it("flags edges between studs, and counts no screws there where they are not backed", () => {
    const backed = boardLayout.solve(wall("10 ft", "6 ft", { screws: { spacing: "8 in" } }));
    const bare = boardLayout.solve(wall("10 ft", "6 ft", { screws: { spacing: "8 in" }, edgesBacked: false }));
    expect(backed.cautions.join(" ")).toContain("6 ft of upright joints lie between studs and need backing");
    expect(bare.cautions.join(" ")).toContain("6 ft of upright joints lie between studs without backing");
    // A line of 36 in: ceil(35.25 / 8) + 1 = 6. Lines of the left boards: 0, 16, 32, 48, and the edge at 60; of the right
    // ones: the edge at 60, and 64, 80, 96, 112, 120.
    expect(backed.answers.boards.map(({ screws }) => screws)).toEqual([30, 36, 30, 36]);
    expect(bare.answers.boards.map(({ screws }) => screws)).toEqual([24, 30, 24, 30]);
  });

  it("warns of offcuts where they are used, and of lines without room where screws are counted", () => {
    const told = (more: Partial<Input>): readonly boolean[] => {
      const all = boardLayout.solve(wall("10 ft", "6 ft", more)).cautions.join(" ");
      return [all.includes("offcuts keep the way they lay"), all.includes("no room at the edge distance")];
    };
    expect([told({}), told({ reuseOffcuts: true }), told({ screws: { spacing: "8 in" } })]).toEqual([[false, false], [true, false], [false, false]]);
    const beware = (more: Partial<Input>): readonly boolean[] => {
      const all = boardLayout.solve(wall("10 ft", "6 ft", more)).cautions.join(" ");
      return [all.includes("at the corner of an opening"), all.includes("An arched or round opening")];
    };
    // The window comes up to the joints on no side; then its sill lies on the level joint, and it is round.
    expect(beware({ openings: [opening("10 in", "10 in", "20 in", "20 in")] })).toEqual([false, false]);
    expect(beware({ openings: [{ shape: { kind: "round", diameter: "20 in" }, left: "10 in", bottom: "36 in" }] })).toEqual([true, true]);
    // The third course is half an inch high, and twice 3/8 in is more.
    const strip = boardLayout.solve(wall("10 ft", "72.5 in", { screws: { spacing: "8 in" } })).cautions.join(" ");
    expect(strip).toContain("Lines of screws that have no room at the edge distance");
  });

  it("says what it took for granted, and nothing of a start that was given", () => {
    const assumed = boardLayout.solve(wall("10 ft", "6 ft")).assumptions;
    expect(assumed.filter((text) => text.startsWith("start:"))).toHaveLength(1);
    expect(assumed.filter((text) => text.startsWith("studs:"))).toHaveLength(1);
    expect(boardLayout.solve(wall("10 ft", "6 ft", { start: { across: "0 in", up: "0 in" } })).assumptions.filter((text) => text.startsWith("start:"))).toEqual([]);
  });

  it("lays a round or arched opening out as the box round it, and says so", () => {
    const round = boardLayout.solve(wall("10 ft", "6 ft", { openings: [{ shape: { kind: "round", diameter: "2 ft" }, left: "2 ft", bottom: "2 ft" }, { shape: { kind: "arched", width: "2 ft", height: "2 ft", rise: "1 ft" }, left: "6 ft", bottom: "0 ft" }] }));
    expect(round.answers.openings.map(({ width, height }) => `${width.toString()} ${height.toString()}`)).toEqual(["24 in 24 in", "24 in 36 in"]);
    expect(round.answers.area.toString()).toBe("50 ft2");
    expect(round.cautions.join(" ")).toContain("the box round it");
  });

  it("warns of lines too short for screws, and does not count them", () => {
    // The upper course is 3/4 in high: twice the edge distance, no room.
    const sliver = boardLayout.solve(wall("5 ft", "36-3/4 in", { screws: { spacing: "8 in" } }));
    expect(sliver.answers.boards.map(({ screws }) => screws)).toEqual([30, 0]);
    expect(sliver.cautions.join(" ")).toMatch(/Lines of screws that have no room .*: 5;/);
    expect(boardLayout(wall("5 ft", "36-13/16 in", { screws: { spacing: "8 in" } })).boards[1]?.screws).toBe(10);
  });

  it("takes a length from a root with all its digits", () => {
    // The rake of a gable 10 ft wide and 5 ft high is the root of 50 ft2.
    const { rake } = gable({ width: "10 ft", height: "5 ft" });
    const layout = boardLayout({ ...wall("1 ft", "1 ft"), wall: { kind: "rectangle", width: rake, height: "6 ft" } });
    expect(layout.area.toNumber("ft2")).toBeCloseTo(6 * Math.sqrt(50), 12);
    expect(layout.wall.width.to("ft").minus(rake.to("ft")).abs().lt("1e-35")).toBe(true);
  });
});

describe("boardLayout refuses", () => {
  it("openings beyond the wall and openings that overlap, all at once", () => {
    const bad = wall("10 ft", "6 ft", { openings: [opening("9 ft", "0 ft", "2 ft", "2 ft"), opening("2 ft", "5 ft", "2 ft", "2 ft"), opening("3 ft", "4 ft", "2 ft", "1.5 ft")] });
    expect(problemsOf(bad)).toEqual([["refused", "openings.0"], ["refused", "openings.1"], ["refused", "openings.2"]]);
    const touching = wall("10 ft", "6 ft", { openings: [opening("0 ft", "0 ft", "2 ft", "6 ft"), opening("2 ft", "0 ft", "2 ft", "3 ft"), opening("2 ft", "3 ft", "8 ft", "3 ft")] });
    expect(problemsOf(touching)).toEqual([]);
    expect(problemsOf({ ...wall("1 ft", "1 ft", { openings: [opening("0 ft", "0 ft", "1 ft", "1 ft")] }), wall: { kind: "gable", width: "8 ft", height: "4 ft" } })).toEqual([["refused", "openings.0"]]);
  });

  it("a board with its sides changed about, shifts longer than the board, a first stud too far, all at once", () => {
    const bad = wall("10 ft", "6 ft", { board: { width: "5 ft", length: "3 ft" }, stagger: "61 in", studs: { spacing: "16 in", start: "17 in" }, start: { across: "61 in", up: "61 in" } });
    expect(problemsOf(bad)).toEqual([["refused", "board.width"], ["refused", "stagger"], ["refused", "studs.start"], ["refused", "start.across"], ["refused", "start.up"]]);
    expect(problemsOf(wall("10 ft", "6 ft", { stagger: "5 ft", start: { across: "5 ft", up: "3 ft" } }))).toEqual([]);
  });

  it("nought and negative sizes, and keys that are missing or not known", () => {
    const bad = { ...wall("0 ft", "6 ft", { board: { width: "0 ft", length: "-1 ft" }, stagger: "-1 in", studs: { spacing: "0 in", start: "-1 in" } }), openings: undefined, turned: true };
    expect(problemsOf(bad).map(([, path]) => path)).toEqual(["wall.width", "openings", "studs.spacing", "studs.start", "board.width", "board.length", "stagger", "turned"]);
  });

  it("a wall that is all opening, and outlines it cannot lay out", () => {
    expect(problemsOf(wall("10 ft", "6 ft", { openings: [opening("0 ft", "0 ft", "10 ft", "6 ft")] }))).toEqual([["refused", "openings"]]);
    expect(problemsOf({ ...wall("1 ft", "1 ft"), wall: { kind: "segment", width: "8 ft", rise: "2 ft" } })).toEqual([["refused", "wall.kind"]]);
    const flat = boardLayout.try({ ...wall("1 ft", "1 ft"), wall: { kind: "trapezoid", width: "10 ft", leftHeight: "0 ft", rightHeight: "0 ft" } });
    expect(flat.ok ? [] : flat.problems.map(({ message }) => message)).toEqual([expect.stringContaining("it has no area")]);
    expect(problemsOf({ ...wall("1 ft", "1 ft", { stagger: "6 ft" }), wall: { kind: "segment", width: "8 ft", rise: "2 ft" } })).toEqual([["refused", "wall.kind"], ["refused", "stagger"]]);
    const stepped = [["0 ft", "0 ft"], ["8 ft", "0 ft"], ["8 ft", "4 ft"], ["4 ft", "4 ft"], ["4 ft", "8 ft"], ["0 ft", "8 ft"]].map(([x, y]) => ({ x, y }));
    expect(problemsOf({ ...wall("1 ft", "1 ft"), wall: { kind: "polygon", points: stepped } })).toEqual([["refused", "wall.kind"]]);
  });

  it("a board that is larger than the wall both ways, not one that is larger one way", () => {
    expect(problemsOf(wall("3 ft", "2 ft", { board: fourByEight }))).toEqual([["refused", "board"]]);
    expect(problemsOf(wall("8 ft", "2 ft", { board: fourByEight }))).toEqual([]);
    expect(problemsOf(wall("95 in", "47 in", { board: fourByEight }))).toEqual([["refused", "board"]]);
    expect(problemsOf(wall("95 in", "48 in", { board: fourByEight }))).toEqual([]);
  });

  it("more boards, studs and openings than are laid out at once, and no fewer", () => {
    // The shift is too long, so that nothing is laid out. (99 / 1 + 1) x (49 / 1 + 1) = 5000 squares of a foot.
    const square = { board: { width: "1 ft", length: "1 ft" }, stagger: "2 ft" } as const;
    const stagger = ["refused", "stagger"];
    expect(problemsOf(wall("99 ft", "49 ft", square))).toEqual([stagger]);
    expect(problemsOf(wall("99.1 ft", "49 ft", square))).toEqual([["refused", "board"], stagger]);
    // 1 x 2 ft: flat (198 / 2 + 1) x (49 / 1 + 1), upright (98 / 2 + 1) x (99 / 1 + 1).
    const oblong = { board: { width: "1 ft", length: "2 ft" }, stagger: "3 ft" } as const;
    expect(problemsOf(wall("198 ft", "49 ft", oblong))).toEqual([stagger]);
    expect(problemsOf(wall("198 ft", "49.1 ft", oblong))).toEqual([["refused", "board"], stagger]);
    expect(problemsOf(wall("99 ft", "98 ft", { ...oblong, orientation: "upright" }))).toEqual([stagger]);
    expect(problemsOf(wall("99 ft", "98.1 ft", { ...oblong, orientation: "upright" }))).toEqual([["refused", "board"], stagger]);
    // 100 ft are a thousand spaces of 1.2 in.
    const studs = (spacing: string): readonly (readonly string[])[] => problemsOf(wall("100 ft", "6 ft", { stagger: "6 ft", studs: { spacing, start: "0 in" } }));
    expect(studs("1.2 in")).toEqual([stagger]);
    expect(studs("1.199 in")).toEqual([["refused", "studs.spacing"], stagger]);
    const windows = (count: number): Input["openings"] => Array.from({ length: count }, (_, index) => opening(`${String(index)} ft`, "0 ft", "1 in", "1 in"));
    expect(problemsOf(wall("200 ft", "6 ft", { stagger: "6 ft", openings: windows(100) }))).toEqual([stagger]);
  });

  it("a job that is a slip of the pen", () => {
    expect(problemsOf(wall("10 ft", "6 ft", { board: { width: "3 mil", length: "5 mil" } }))).toEqual([["refused", "board"]]);
    expect(problemsOf(wall("10 ft", "6 ft", { studs: { spacing: "16 mil", start: "0 in" } }))).toEqual([["refused", "studs.spacing"]]);
    expect(problemsOf(wall("200 ft", "6 ft", { openings: Array.from({ length: 101 }, (_, index) => opening(`${String(index)} ft`, "0 ft", "1 in", "1 in")) }))).toEqual([["refused", "openings"]]);
  });
});
