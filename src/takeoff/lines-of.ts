import type { Quantity } from "../core/quantity.js";
import { sum } from "../core/quantity-arithmetic.js";
import type { FaceMeasures, Stone } from "./face-measures.js";
import type { Layer } from "./job.js";
import { barrierLines } from "./lines/barrier.js";
import { boardLines } from "./lines/boards.js";
import { foamBoardLines } from "./lines/foam-board.js";
import { jointTapeLines } from "./lines/joint-tape.js";
import { jointLines } from "./lines/joints.js";
import { lathLines } from "./lines/lath.js";
import { ledgerLines } from "./lines/ledger.js";
import { movementJointLines } from "./lines/movement-joints.js";
import { scratchCoatLines } from "./lines/scratch-coat.js";
import { settingBedLines } from "./lines/setting-bed.js";
import { sheetGoodsLines } from "./lines/sheet-goods.js";
import { trimLines } from "./lines/trim.js";
import { unitLines } from "./lines/units.js";
import type { OrderLine } from "./order-line.js";
import type { Taking } from "./taking.js";

/** What the layers are worked out on. */
export interface Ground {
  readonly bed: Quantity<"length">;
  readonly stone: Stone | undefined;
  readonly faces: FaceMeasures;
  readonly taking: Taking;
}

/** The lines of one layer. */
export function linesOf(layer: Layer, index: number, { bed, stone, faces, taking }: Ground): readonly OrderLine[] {
  const path = ["layers", index];
  switch (layer.kind) {
    case "studs":
    case "masonry backing":
      return [];
    case "boards":
      return boardLines(layer, faces.backing, path, taking);
    case "foam board":
      return foamBoardLines(layer, faces.backing, path, taking);
    case "sheet goods":
      return sheetGoodsLines(layer, faces.backing, path, taking);
    case "lath":
      return lathLines(layer, withReturns(layer.name, faces, taking), path, taking);
    case "scratch coat":
      return scratchCoatLines(layer, withReturns(layer.name, faces, taking), path, taking);
    case "joint tape":
      return jointTapeLines(layer, faces.backing, path, taking);
    case "barrier":
      return barrierLines(layer, path, taking);
    case "ledger":
      return ledgerLines(layer, path, taking);
    case "trim":
      return trimLines(layer, path, taking);
    case "movement joints":
      return movementJointLines(layer, path, taking);
    case "setting bed":
      return settingBedLines(layer, bed, faces.face, path, taking);
    case "units":
      // A second layer of units is refused; what else is wrong with it is told all the same.
      return stone === undefined ? [] : unitLines({ ...stone, units: layer }, faces, path, taking);
    case "joints":
      return jointLines(layer, bed, faces.face, path, taking);
  }
}

/** The face of the backing with the returns into the openings: what carries stone carries it there too. */
function withReturns(name: string, { backing }: FaceMeasures, { measures, work }: Taking): Quantity<"area"> {
  work.assume(`${name}: covers the walls and as far into the openings as the face turns in`);
  return sum([backing, measures.returns]);
}
