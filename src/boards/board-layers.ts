import { common } from "../core/common-refusals.js";
import { composed, type Work } from "../core/composed.js";
import type { Trouble } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { nested } from "../schema/nested.js";
import { type BoardLayout, boardLayout } from "./board-layout.js";
import { type CloseJoint, closeJointsOf } from "./close-joints.js";
import { exactLength, nought, type Shown, shownLike } from "../shapes/exact-length.js";
import { layersInput, type ReadLayers, type ReadLayout } from "./layout-input.js";
import { layoutTroubles } from "./layout-geometry.js";
import { say } from "./refusals.js";
import { sharedScrewsOf } from "./shared-screws.js";

/** Boards laid out in layers. */
export interface BoardLayers {
  /** From the studs outward. */
  readonly layers: readonly BoardLayout[];
  /** Stretches of joints that lie nearer than the least offset to a joint of the layer behind. */
  readonly closeJoints: readonly CloseJoint[];
  /** All such stretches. */
  readonly closeLength: Quantity<"length">;
  /** Those that lie right over a joint of the layer behind. */
  readonly jointsOverJoints: Quantity<"length">;
  /** Lines of screws that lie over a line of the layer behind; where neighbouring layers have their screws counted. */
  readonly screwLinesShared?: Quantity<"count">;
  /** Screws nearer than the least offset to one of the layer behind, or right over one where no offset is given. */
  readonly screwsTooNear?: Quantity<"count">;
}

/**
 * Lays boards out in layers on the same studs, and finds the joints of a layer that lie too near to those of the layer
 * behind, and its screws that would meet those of that layer.
 *
 * @example
 * ```ts
 * const upright = { board: { width: "4 ft", length: "8 ft" }, orientation: "upright", stagger: "0 in" } as const;
 * const layers = boardLayers({
 *   wall: { kind: "rectangle", width: "20 ft", height: "8 ft" },
 *   openings: [],
 *   studs: { spacing: "16 in", start: "16 in" },
 *   edgesBacked: false,
 *   reuseOffcuts: false,
 *   layers: [upright, { ...upright, start: { across: "32 in", up: "0 in" } }],
 *   leastOffset: "16 in",
 * });
 * layers.closeJoints.length; // 0
 * layers.layers[1].boardsUsed.toString(); // "6"
 * ```
 */
export const boardLayers = /* @__PURE__ */ composed({
  id: "boards.board-layers",
  title: "Boards in layers",
  reads: /* @__PURE__ */ nested(layersInput),
  run: layOut,
});

const mostLayers = 4;

function layOut({ layers, leastOffset, leastScrewOffset, ...wall }: ReadLayers, work: Work): BoardLayers {
  const jobs = layers.map((layer) => ({ ...wall, ...layer }));
  const number = layers.length === 0 || layers.length > mostLayers ? [refusal(["layers"], common("counted", { count: layers.length, of: "layers" }), say("layersFromOneTo", { most: mostLayers }))] : [];
  refuseAll([...number, ...troublesOf(jobs)], work);
  const layouts = jobs.map((job, index) => work.part(boardLayout, job, ["layers", index]).answers);
  const show = shownLike((layers[0] as ReadLayout).board.width);
  const close = layouts.flatMap(({ joints }, index) => closeJointsOf(index + 1, joints, layouts[index - 1]?.joints ?? [], exactLength(leastOffset), show));
  const total = (list: readonly CloseJoint[]): Quantity<"length"> => show.run(list.reduce((sum, { length }) => sum.add(exactLength(length)), nought));
  const over = total(close.filter(({ offset }) => exactLength(offset).equals(nought)));
  const closeLength = total(close);
  if (close.length > 0) work.caution(`${closeLength.toString()} of joints lie nearer than ${leastOffset.toString()} to a joint of the layer behind: begin the layer elsewhere (start), or turn it.`);
  return { layers: layouts, closeJoints: close, closeLength, jointsOverJoints: over, ...screwsOverScrews(layouts, leastScrewOffset, show, work) };
}

/** What the screws of neighbouring layers share, where both have their screws counted. */
function screwsOverScrews(layouts: readonly BoardLayout[], least: Quantity<"length"> | undefined, show: Shown, work: Work): Pick<BoardLayers, "screwLinesShared" | "screwsTooNear"> {
  const pairs = layouts.flatMap((layout, index) => {
    const behind = layouts[index - 1];
    return behind?.screws === undefined || layout.screws === undefined ? [] : [sharedScrewsOf(layout.boards, behind.boards, least === undefined ? undefined : exactLength(least))];
  });
  if (pairs.length === 0) return {};
  const [lines, screws] = [pairs.reduce((total, pair) => total + pair.lines, 0), pairs.reduce((total, pair) => total + pair.screws, 0)];
  const where = least === undefined ? "right over one of the layer behind" : `nearer than ${least.toString()} to one of the layer behind`;
  if (screws > 0) work.caution(`Screws, set out as counted, that stand ${where}: ${String(screws)}; lines of screws over a line of it: ${String(lines)}. Shift the screws of the layer along the studs, about half a space, or begin its boards elsewhere.`);
  return { screwLinesShared: show.count(lines), screwsTooNear: show.count(screws) };
}

/** What is wrong with the wall is told once, what is wrong with a layer under that layer. */
function troublesOf(jobs: readonly ReadLayout[]): readonly Trouble[] {
  const ofLayer = ({ path: [key] }: Trouble): boolean => key === "board" || key === "stagger" || key === "start";
  return jobs.flatMap((job, index) => layoutTroubles(job).filter((one) => index === 0 || ofLayer(one)).map((one) => (ofLayer(one) ? { ...one, path: ["layers", index, ...one.path] } : one)));
}
