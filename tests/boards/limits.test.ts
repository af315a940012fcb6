// What can be and what cannot. A board, a wall, a roll has a size; laps and overlaps may be left out; waste below nought
// would be a gain. A stud is counted from the first.
import { describe } from "vitest";
import { boardCount } from "../../src/boards/board-count.js";
import { boardJointEstimate } from "../../src/boards/board-joint-estimate.js";
import { boardJointTape } from "../../src/boards/board-joint-tape.js";
import { linearOrder } from "../../src/boards/linear-order.js";
import { studMark } from "../../src/boards/stud-mark.js";
import { itHoldsTheLimits } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(boardCount, { area: "above 0 ft2", boardWidth: "above 0 in", boardHeight: "above 0 in", waste: "from 0 %, below 100 %" });
  itHoldsTheLimits(boardJointEstimate, { area: "above 0 ft2", boardWidth: "above 0 in", boardHeight: "above 0 in", outline: "above 0 ft", outsideCorners: "from 0 ft" });
  itHoldsTheLimits(boardJointTape, { jointLength: "above 0 ft", overlaps: "from 0, whole", overlap: "from 0 in, usually 2 in", rollLength: "above 0 ft", waste: "from 0 %, below 100 %" });
  itHoldsTheLimits(linearOrder, { length: "above 0 ft", pieceLength: "above 0 ft", lap: "from 0 in", waste: "from 0 %, below 100 %" });
  itHoldsTheLimits(studMark, { start: "from 0 in", spacing: "above 0 in", number: "from 1, whole", measured: "from 0 in", flange: "above 0 in" });
});
