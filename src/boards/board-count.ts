import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Boards placed and boards to order for an area. Both are rounded up once, over the whole job, from the unrounded net.
 *
 * @example
 * ```ts
 * const boards = boardCount({ area: "1256 ft2", boardWidth: "4 ft", boardHeight: "8 ft", waste: "5 %" });
 * boards.placed.toString(); // "40"
 * boards.toOrder.toString(); // "42"
 * ```
 */
export const boardCount = /* @__PURE__ */ calculation({
  id: "boards.board-count",
  title: "Boards by area",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "wall face to be boarded, openings out", above: 0 },
    boardWidth: { is: "length", unit: ["in", "mm"], symbol: "W", says: "width of one board", above: 0 },
    boardHeight: { is: "length", unit: ["in", "mm"], symbol: "H", says: "height of one board", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "offcuts that are thrown away and broken boards, on top of the net", atLeast: 0, below: 1 },
  },
  steps: {
    boardArea: { is: "area", unit: ["ft2", "m2"], symbol: "A_b", says: "face of one board", formula: "boardWidth * boardHeight", basis: geometry },
    net: { is: "count", symbol: "n", says: "boards in the area, before rounding", formula: "area / boardArea", basis: arithmetic },
    placed: { is: "count", symbol: "n_p", says: "whole boards on the wall", formula: "ceil(net)", basis: arithmetic },
    withWaste: { is: "count", symbol: "n_w", says: "boards with waste, before rounding", formula: "net * (1 + waste)", basis: arithmetic },
    toOrder: { is: "count", symbol: "n_o", says: "whole boards to order", formula: "ceil(withWaste)", basis: arithmetic },
  },
  cautions: ["By area, an offcut counts as a board where it fits nowhere else; a layout of the boards tells which do: see boards.board-layout."],
});
