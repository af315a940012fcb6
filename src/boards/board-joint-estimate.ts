import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Length of the joints between boards and over outside corners, estimated from the area and the outline of the wall.
 *
 * @example
 * ```ts
 * const joints = boardJointEstimate({ area: "160 ft2", boardWidth: "4 ft", boardHeight: "8 ft", outline: "56 ft", outsideCorners: "8 ft" });
 * joints.betweenBoards.toString(); // "32 ft"
 * joints.jointLength.toString(); // "40 ft"
 * ```
 */
export const boardJointEstimate = /* @__PURE__ */ calculation({
  id: "boards.board-joint-estimate",
  title: "Length of the joints between boards, estimated",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "wall face that is boarded, openings out", above: 0 },
    boardWidth: { is: "length", unit: ["in", "mm"], symbol: "W", says: "width of one board", above: 0 },
    boardHeight: { is: "length", unit: ["in", "mm"], symbol: "H", says: "height of one board", above: 0 },
    outline: { is: "length", unit: ["ft", "m"], symbol: "p", says: "edges of the area that meet no other board on the same face: round the wall and round its openings", above: 0 },
    outsideCorners: { is: "length", unit: ["ft", "m"], symbol: "c", says: "outside corners that are taped, added up", atLeast: 0 },
  },
  steps: {
    boardPerimeter: { is: "length", unit: ["ft", "m"], symbol: "p_b", says: "round one board", formula: "2 * (boardWidth + boardHeight)", basis: geometry },
    boardArea: { is: "area", unit: ["ft2", "m2"], symbol: "A_b", says: "face of one board", formula: "boardWidth * boardHeight", basis: geometry },
    edges: { is: "length", unit: ["ft", "m"], symbol: "e", says: "edges of all boards", formula: "area * boardPerimeter / boardArea", basis: geometry },
    betweenBoards: { is: "length", unit: ["ft", "m"], symbol: "j_b", says: "joints between boards, each of two edges", formula: "(edges - outline) / 2", basis: geometry, atLeast: 0 },
    jointLength: { is: "length", unit: ["ft", "m"], symbol: "j", says: "joints with the outside corners", formula: "betweenBoards + outsideCorners", basis: geometry },
  },
  cautions: ["An estimate: cut boards have more edge for their area than whole ones, so the joints come out longer; a layout of the boards counts them: see boards.board-layout."],
});
