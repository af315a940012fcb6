import type { Quantity } from "../core/quantity.js";
import { compare, sum } from "../core/quantity-arithmetic.js";
import type { MovementJoint, MovementLayout } from "../movement/movement-layout.js";
import type { WallBox } from "../boards/placed-board.js";
import { say } from "./refusals.js";
import { refuse } from "./results.js";
import { type Area, dimensionText, type Sheet } from "./sheet.js";
import { spread } from "./spread.js";
import { line, words } from "./svg.js";

/** A movement joint with the letters it goes by in the picture. */
export interface LetteredJoint extends MovementJoint {
  readonly name: string;
  readonly runs: "upright" | "level";
}

/** The joints in the order of the answers: the upright ones from the left, the level ones from the foot up. */
export function lettered(movement: MovementLayout | undefined): readonly LetteredJoint[] {
  const all = [...(movement?.upright ?? []).map((joint) => ({ ...joint, runs: "upright" as const })), ...(movement?.level ?? []).map((joint) => ({ ...joint, runs: "level" as const }))];
  return all.map((joint, index) => ({ ...joint, name: `J${String(index + 1)}` }));
}

/** `J1 at 9 ft (jamb, spacing)`. */
export function jointList(joints: readonly LetteredJoint[]): string {
  return joints.map(({ name, at, runs, why }) => `${name} ${runs === "upright" ? "at" : "up"} ${dimensionText(at)} (${why.join(", ")})`).join("; ");
}

interface Given {
  readonly wall: WallBox;
  readonly openings: readonly WallBox[];
  readonly movement: MovementLayout | undefined;
}

/** Ends the drawing where the joints were laid out on another wall, or round other openings. */
export function refuseOtherJoints(id: string, joints: readonly LetteredJoint[], { wall, openings, movement }: Given): void {
  const [width, height] = (["width", "height"] as const).map((size) => farthest((movement?.panels ?? []).map((panel) => sum([panel[size === "width" ? "left" : "bottom"], panel[size]]))));
  if (width !== undefined && height !== undefined && (compare(width, wall.width) !== 0 || compare(height, wall.height) !== 0)) {
    refuse(id, ["movement"], "", say("otherWall", { width: dimensionText(width), height: dimensionText(height), wallWidth: dimensionText(wall.width), wallHeight: dimensionText(wall.height) }));
  }
  for (const { at, runs, length, throughOpening } of joints) {
    const place = dimensionText(at);
    const meets = openings.map((box) => {
      const [from, size] = runs === "upright" ? [box.left, box.width] : [box.bottom, box.height];
      return Math.min(compare(at, from), compare(sum([from, size]), at));
    });
    const crossed = meets.includes(1);
    if (crossed !== throughOpening) refuse(id, ["openings"], "", say(throughOpening ? "jointMeetsUngiven" : "jointWithoutOpening", { runs, place }));
    const free = meets.every((one) => one < 0);
    if (free && compare(length, runs === "upright" ? wall.height : wall.width) !== 0) refuse(id, ["movement"], "", say("jointIsShorter", { runs, place, length: dimensionText(length) }));
  }
}

function farthest(lengths: readonly Quantity<"length">[]): Quantity<"length"> | undefined {
  return [...lengths].sort(compare).at(-1);
}

/** A joint as a double line, left out where there is an opening, also along its edge: the answers do not count it there. */
export function jointLines({ at, runs }: LetteredJoint, sheet: Sheet, face: Area, holes: readonly Area[]): readonly string[] {
  const upright = runs === "upright";
  const place = upright ? sheet.x(at) : sheet.y(at);
  const gaps = holes.filter((hole) => (upright ? hole.left < place + 0.01 && hole.right > place - 0.01 : hole.top < place + 0.01 && hole.bottom > place - 0.01)).map((hole) => (upright ? [hole.top, hole.bottom] : [hole.left, hole.right]));
  const stops = [...(upright ? [face.top] : [face.left]), ...gaps.sort(([a = 0], [b = 0]) => a - b).flat(), ...(upright ? [face.bottom] : [face.right])];
  return stops.flatMap((from, index) => {
    const until = stops[index + 1];
    if (index % 2 === 1 || until === undefined || until - from < 0.01) return [];
    const ends = (upright ? [[place, from], [place, until]] : [[from, place], [until, place]]) as [[number, number], [number, number]];
    return [line(...ends, { "stroke-width": 5 }), line(...ends, { "stroke-width": 2, stroke: "white" })];
  });
}

/** The letters of the joints: over the wall and at its right end. */
export function jointLabels(joints: readonly LetteredJoint[], sheet: Sheet, face: Area): readonly string[] {
  const upright = joints.filter(({ runs }) => runs === "upright");
  const level = joints.filter(({ runs }) => runs === "level");
  const places = spread(upright.map(({ at }) => sheet.x(at)), 26, face.left, face.right);
  return [
    ...upright.flatMap(({ name, at }, index) => {
      const x = places[index] ?? 0;
      return [line([x, face.top - 7], [sheet.x(at), face.top], { "stroke-width": 0.6 }), words(name, [x, face.top - 13])];
    }),
    ...level.flatMap(({ name, at }) => [line([face.right, sheet.y(at)], [face.right + 5, sheet.y(at)], { "stroke-width": 0.6 }), words(name, [face.right + 7, sheet.y(at)], { anchor: "start" })]),
  ];
}
