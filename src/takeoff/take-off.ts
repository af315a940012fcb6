import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { quantity } from "../core/read-quantity.js";
import { notchedBed } from "../mortar/notched-bed.js";
import { nested } from "../schema/nested.js";
import { type FaceMeasures, measureFaces } from "./face-measures.js";
import { jobSchema, type Layer, type LayerOf } from "./job.js";
import { barrierLines } from "./lines/barrier.js";
import { boardLines } from "./lines/boards.js";
import { jointTapeLines } from "./lines/joint-tape.js";
import { jointLines } from "./lines/joints.js";
import { ledgerLines } from "./lines/ledger.js";
import { settingBedLines } from "./lines/setting-bed.js";
import { unitLines } from "./lines/units.js";
import { measureJob } from "./measure-job.js";
import type { OrderLine } from "./order-line.js";
import { openTaking, type Taking } from "./taking.js";

/**
 * The order list of a job: for each layer of the wall, from the studs out, what ends on it, what is added, what to
 * order and in how many packs; each line with its worked solution.
 *
 * Bed, back-butter and joint mortar run over the whole stone face, corner cover included; only flat units lose the
 * cover. Screws, tape and spacers are for what is placed, not for what is spare.
 *
 * @example
 * ```ts
 * const list = takeOff({
 *   measuredTo: "backing",
 *   elevations: [{ name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] }],
 *   layers: [{ kind: "studs", spacing: "16 in" }, { kind: "boards", name: "sheathing", acrossStuds: "4 ft", alongStuds: "8 ft", edgesBacked: false, screwSpacing: "8 in" }],
 *   packs: { "sheathing screws": { pieces: 1000 } },
 *   allowances: { sheathing: { waste: "10 %" }, "sheathing screws": { waste: "5 %" } },
 * });
 * list.lines[0].toOrder.toString(); // "11"
 * list.lines[1].net.toString(); // "520"
 * ```
 */
export const takeOff = /* @__PURE__ */ composed({
  id: "takeoff.take-off",
  title: "Order list",
  reads: /* @__PURE__ */ nested(jobSchema),
  cautions: [
    "Yields, film, water and pot life are those of the data sheets: check them against what is delivered.",
    "Cut wet or with suction and wear a mask: the dust of stone, board and mortar holds silica. Wet mortar burns: wear gloves and glasses.",
    "Weight, wind and fastening are not checked here; local code and a licensed design professional decide.",
  ],
  run: (job, work) => {
    const taking = openTaking(job, measureJob(job, work), work);
    const bed = bedThickness(taking.layer("setting bed"), job.layers, work);
    const units = taking.layer("units");
    const faces = measureFaces(taking, units === undefined ? undefined : { units, bed });
    work.assume("boards cover the walls without returns into openings; all openings are deducted from them");
    const lines = job.layers.flatMap((layer, index) => linesOf(layer, index, { bed, faces, taking }));
    taking.close();
    return { lines };
  },
});

/** The bed behind the units: by thickness, or as the trowel leaves it; none where there is no setting bed. */
function bedThickness(layer: LayerOf<"setting bed"> | undefined, layers: readonly Layer[], work: Work): Quantity<"length"> {
  if (layer === undefined) return quantity("length", "0 in");
  if (layer.bed.from === "thickness") return layer.bed.thickness;
  const { notch, depth, width, tooth, angle } = layer.bed;
  return work.part(notchedBed, { notch, depth, width, tooth, angle }, ["layers", layers.indexOf(layer), "bed"]).answers.bed;
}

interface Ground {
  readonly bed: Quantity<"length">;
  readonly faces: FaceMeasures;
  readonly taking: Taking;
}

function linesOf(layer: Layer, index: number, { bed, faces, taking }: Ground): readonly OrderLine[] {
  const path = ["layers", index];
  switch (layer.kind) {
    case "studs":
      return [];
    case "boards":
      return boardLines(layer, faces.backing, path, taking);
    case "joint tape":
      return jointTapeLines(layer, faces.backing, path, taking);
    case "barrier":
      return barrierLines(layer, path, taking);
    case "ledger":
      return ledgerLines(layer, path, taking);
    case "setting bed":
      return settingBedLines(layer, bed, faces.face, path, taking);
    case "units":
      return unitLines(layer, faces, path, taking);
    case "joints":
      return jointLines(layer, bed, faces.face, path, taking);
  }
}
