// What can be and what cannot. A board, a wall, a roll has a size; laps and overlaps may be left out; waste below nought
// would be a gain. A stud is counted from the first.
import { describe } from "vitest";
import { boardCount } from "../../src/boards/board-count.js";
import { boardJointEstimate } from "../../src/boards/board-joint-estimate.js";
import { boardJointTape } from "../../src/boards/board-joint-tape.js";
import { linearOrder } from "../../src/boards/linear-order.js";
import { studMark } from "../../src/boards/stud-mark.js";
import { boardLayout } from "../../src/boards/board-layout.js";
import { boardLayers } from "../../src/boards/board-layers.js";
import { cutStock } from "../../src/boards/cut-stock.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(boardCount, { area: "above 0 ft2", boardWidth: "above 0 in", boardHeight: "above 0 in", waste: "from 0 %, below 100 %" });
  itHoldsTheLimits(boardJointEstimate, { area: "above 0 ft2", boardWidth: "above 0 in", boardHeight: "above 0 in", outline: "above 0 ft", outsideCorners: "from 0 ft" });
  itHoldsTheLimits(boardJointTape, { jointLength: "above 0 ft", overlaps: "from 0, whole", overlap: "from 0 in, usually 2 in", rollLength: "above 0 ft", waste: "from 0 %, below 100 %" });
  itHoldsTheLimits(linearOrder, { length: "above 0 ft", pieceLength: "above 0 ft", lap: "from 0 in", waste: "from 0 %, below 100 %" });
  itHoldsTheLimits(studMark, { start: "from 0 in", spacing: "above 0 in", number: "from 1, whole", measured: "from 0 in", flange: "above 0 in" });

  const board = { board: { width: "4 ft", length: "8 ft" }, orientation: "upright", stagger: "0 in", start: { across: "32 in", up: "0 in" }, screws: { spacing: "8 in", edgeDistance: "3/8 in" } };
  const wall = {
    wall: { kind: "rectangle", width: "20 ft", height: "8 ft" }, openings: [{ shape: { kind: "rectangle", width: "32 in", height: "4 ft" }, left: "56 in", bottom: "3 ft" }],
    studs: { spacing: "16 in", start: "16 in" }, edgesBacked: false, reuseOffcuts: false,
  };
  const layer = (at: string): Readonly<Record<string, string>> => ({
    [`${at}board.width`]: "above 0 in", [`${at}board.length`]: "above 0 in", [`${at}stagger`]: "from 0 in", [`${at}start.across`]: "from 0 in", [`${at}start.up`]: "from 0 in",
    [`${at}screws.spacing`]: "above 0 in", [`${at}screws.edgeDistance`]: "above 0 in",
  });
  const face = { "openings.0.left": "from 0 in", "openings.0.bottom": "from 0 in", "studs.spacing": "above 0 in", "studs.start": "from 0 in" };
  itHoldsTheLimitsIn(boardLayout, "a layer", { ...wall, ...board }, { ...face, ...layer("") });
  itHoldsTheLimitsIn(boardLayers, "two layers", { ...wall, layers: [board, { ...board, start: { across: "0 in", up: "0 in" } }], leastOffset: "16 in", leastScrewOffset: "1 in" }, {
    ...face, ...layer("layers.1."), leastOffset: "above 0 in", leastScrewOffset: "above 0 in",
  });
  itHoldsTheLimitsIn(cutStock, "lengths", { wanted: [{ length: "64 in", count: 4 }, { length: "50 in", count: 2 }], stock: ["10 ft", "12 ft"], sawCut: "1/8 in" }, {
    "wanted.1.length": "above 0 in", "wanted.1.count": "from 1, to 1000", "stock.1": "above 0 ft", sawCut: "from 0 in",
  });
});
