import { describe, expect, it } from "vitest";
import { boardJointEstimate } from "../../src/boards/board-joint-estimate.js";

describe("boardJointEstimate", () => {
  it("is exact where all boards are whole", () => {
    // 20 ft x 8 ft in five 4 x 8 boards stood upright: four joints of 8 ft. By the formula:
    // boards 160 / 32 = 5, edges 5 x 24 = 120 ft, outline 2 x (20 + 8) = 56 ft, (120 - 56) / 2 = 32 ft = 4 x 8 ft.
    const joints = boardJointEstimate({ area: "160 ft2", boardWidth: "4 ft", boardHeight: "8 ft", outline: "56 ft", outsideCorners: "0 ft" });
    expect(joints.edges.toString()).toBe("120 ft");
    expect(joints.betweenBoards.toString()).toBe("32 ft");
    expect(joints.jointLength.toString()).toBe("32 ft");
    // 12 ft x 10 ft in 3 x 5 boards laid flat would have cuts; upright 4 x 2 whole boards: three joints of 10 ft and one
    // of 12 ft, 42 ft. By the formula: 8 x 16 = 128 ft of edges less 44 ft, halved.
    expect(boardJointEstimate({ area: "120 ft2", boardWidth: "3 ft", boardHeight: "5 ft", outline: "44 ft", outsideCorners: "0 ft" }).betweenBoards.toString()).toBe("42 ft");
  });

  it("has no joint in a wall of one board, and adds the outside corners once", () => {
    const joints = boardJointEstimate({ area: "32 ft2", boardWidth: "4 ft", boardHeight: "8 ft", outline: "24 ft", outsideCorners: "16 ft" });
    expect(joints.betweenBoards.toString()).toBe("0 ft");
    expect(joints.jointLength.toString()).toBe("16 ft");
  });

  it("refuses an outline that is longer than all the edges there are", () => {
    const tried = boardJointEstimate.try({ area: "32 ft2", boardWidth: "4 ft", boardHeight: "8 ft", outline: "24.01 ft", outsideCorners: "0 ft" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")])).toEqual([["tooLow", "betweenBoards"]]);
  });

  it("refuses nought and negative inputs", () => {
    const tried = boardJointEstimate.try({ area: "0 ft2", boardWidth: "0 ft", boardHeight: "0 ft", outline: "0 ft", outsideCorners: "-1 ft" });
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["area", "boardWidth", "boardHeight", "outline", "outsideCorners"]);
  });

  it("gives the same length in metres", () => {
    // The first wall: 160 ft2 = 14.8644864 m2, outline 56 ft = 17.0688 m, joints 32 ft = 9.7536 m.
    const joints = boardJointEstimate({ area: "14.8644864 m2", boardWidth: "1219.2 mm", boardHeight: "2438.4 mm", outline: "17.0688 m", outsideCorners: "0 m" });
    expect(joints.jointLength.toString()).toBe("9.7536 m");
  });
});
