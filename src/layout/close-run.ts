import type { Callable } from "../core/callable.js";
import type { Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum, times } from "../core/quantity-arithmetic.js";
import type { Words } from "../core/wording.js";
import { usualLeastCut } from "../data/layout.js";
import { cutInRun } from "./cut-in-run.js";
import { halfUnit } from "./half-unit.js";
import { jointBedToBed } from "./joint-bed-to-bed.js";
import { jointForCut } from "./joint-for-cut.js";
import { jointInOpening } from "./joint-in-opening.js";
import { jointUnitToUnit } from "./joint-unit-to-unit.js";
import { say } from "./refusals.js";

type Length = Quantity<"length">;

/** The joints that may be taken, and the one that is wanted. */
export interface JointRange {
  readonly least: Length;
  readonly wanted: Length;
  readonly most: Length;
}

/** Where a run begins and ends, and so how many joints it has. */
export type Ends = "unit to unit" | "bed to bed" | "opening";

/** Joints more than units. */
export const jointsOver = { "unit to unit": -1, "bed to bed": 0, opening: 1 } as const satisfies Record<Ends, number>;

/** What the joint of a run is worked out from. */
interface JointInput {
  readonly run: Length;
  readonly unitsTotal: Length;
  readonly units: number;
}

/** The joint that closes a run by its ends, shown as a part where there is a run of ours; nothing where it would be below nought. */
export function jointBy(ends: Ends, input: JointInput, work?: Work): Length | undefined {
  const by = <Input, A extends { readonly joint: Length }>(of: Callable<Input, A>, given: Input): Length | undefined => {
    const tried = of.try(given);
    return tried.ok ? (work?.part(of, given) ?? tried.solution).answers.joint : undefined;
  };
  if (ends === "bed to bed") return by(jointBedToBed, input);
  return ends === "opening" ? by(jointInOpening, input) : by(jointUnitToUnit, input);
}

/** A number of whole units, and the joint with which they fill the run. */
export interface ClosingJoint {
  readonly units: number;
  readonly joint: Length;
  /** Whether that joint lies within the range. */
  readonly within: boolean;
}

/** How a run is filled. */
export interface ClosedRun {
  readonly joint: Length;
  /** Whole units. */
  readonly whole: number;
  /** Cut pieces: none, one at the end, or one at each end. */
  readonly cuts: 0 | 1 | 2;
  /** The size of each cut piece. */
  readonly cut?: Length;
  /** The numbers of whole units nearest to what the wanted joint gives. */
  readonly closing: readonly ClosingJoint[];
}

/** A run that is to be filled: courses in a height, or units in a course. */
export interface Run {
  readonly run: Length;
  readonly ends: Ends;
  readonly joint: JointRange;
  /** The units one after another; they begin again at the end of the list. */
  readonly sizes: readonly Length[];
  /** Absent where it is half a unit. */
  readonly leastCut: Length | undefined;
  /** Which ways of cutting to try, the best first. */
  readonly waysToCut: readonly (1 | 2)[];
  /** What the units are called in a problem. */
  readonly called: "courses" | "units";
  readonly path: Path;
}

const mostUnits = 1000;

/** The size of a unit by its place, from 0. */
export function sizeAt(sizes: readonly Length[], place: number): Length {
  return sizes[place % sizes.length] as Length;
}

/** The sizes of so many units added up, from a place on. */
export function sizesTotal(sizes: readonly Length[], from: number, count: number): Length {
  const none = times(sizeAt(sizes, from), 0);
  return sum([none, ...Array.from({ length: Math.max(0, count) }, (_, index) => sizeAt(sizes, from + index))]);
}

/** Whole units with the joint nearest to the one wanted; where none lies in the range, cut pieces that are not too small. */
export function closeRun(given: Run, work: Work): ClosedRun {
  const fewer = mostThatFit(given, work);
  refuseOneUnit(given, fewer, work);
  const closing = [fewer, fewer + 1].flatMap((units) => closingJoint(given, units, work));
  const { wanted } = given.joint;
  const [first, second] = closing.filter(({ within }) => within);
  const best = first !== undefined && second !== undefined && compare(apart(second.joint, wanted), apart(first.joint, wanted)) < 0 ? second : first;
  if (best !== undefined) return { joint: best.joint, whole: best.units, cuts: 0, closing };
  const tooSmall: Words[] = [];
  for (const cuts of given.waysToCut) {
    const found = withCuts(given, fewer, cuts, tooSmall, work);
    if (found !== undefined) return { ...found, closing };
  }
  const { called, joint, path, run } = given;
  const joints = closing.map((one) => say("closesWithJoints", { units: one.units, called, joint: one.joint }));
  const why = [...(joints.length === 0 ? [say("noWholeNumberCloses", { called })] : joints), ...tooSmall];
  return work.refuse({ code: "refused", path, given: run.toString(), wanted: say("jointsDoNotFill", { least: joint.least, most: joint.most, why }) });
}

/** One unit that fills the run has no joint beside it. */
function refuseOneUnit({ run, ends, sizes, path }: Run, fit: number, work: Work): void {
  if (ends === "unit to unit" && fit === 1 && compare(sizeAt(sizes, 0), run) === 0) work.refuse({ code: "refused", path, given: run.toString(), wanted: say("oneUnitFills") });
}

/** How far two lengths are apart. */
export function apart(one: Length, other: Length): Length {
  return compare(one, other) < 0 ? subtract(other, one) : subtract(one, other);
}

/** The most whole units that the run holds with the wanted joint. */
export function mostThatFit({ run, ends, joint, sizes, called, path }: Run, work: Work): number {
  let total = sizesTotal(sizes, 0, 0);
  for (let units = 0; units <= mostUnits; units += 1) {
    total = sum([total, sizeAt(sizes, units)]);
    if (compare(sum([total, times(joint.wanted, units + 1 + jointsOver[ends])]), run) > 0) return units;
  }
  return work.refuse({ code: "tooHigh", path, given: run.toString(), wanted: say("filledByAtMost", { most: mostUnits, called }) });
}

function closingJoint({ run, ends, joint: { least, most }, sizes }: Run, units: number, work: Work): readonly ClosingJoint[] {
  const joint = jointBy(ends, { run, unitsTotal: sizesTotal(sizes, 0, units), units }, work);
  if (joint === undefined) return [];
  return [{ units, joint, within: compare(joint, least) >= 0 && compare(joint, most) <= 0 }];
}

/** One piece more than whole units fit: the last is cut, or the first and the last alike. */
function withCuts({ run, ends, joint, sizes, leastCut: asked, called }: Run, fit: number, cuts: 1 | 2, tooSmall: Words[], work: Work): Omit<ClosedRun, "closing"> | undefined {
  const whole = fit + 1 - cuts;
  if (whole < 0) return undefined;
  const wholeTotal = sizesTotal(sizes, cuts - 1, whole);
  const joints = fit + 1 + jointsOver[ends];
  const ofUnits = [sizeAt(sizes, cuts === 1 ? fit : 0), sizeAt(sizes, fit)];
  const [smaller, larger] = [...ofUnits].sort(compare) as [Length, Length];
  const leastCut = asked ?? leastCutOf(larger, joint.wanted, work);
  const cutBy = (width: Length): Length | undefined => {
    const input = { run, wholeTotal, joints, joint: width, cuts };
    const tried = cutInRun.try(input);
    return tried.ok && compare(tried.solution.answers.cut, leastCut) >= 0 && compare(tried.solution.answers.cut, smaller) < 0 ? work.part(cutInRun, input).answers.cut : undefined;
  };
  const cut = cutBy(joint.wanted);
  if (cut !== undefined) return { joint: joint.wanted, whole, cuts, cut };
  const input = { run, wholeTotal, cuts, cut: leastCut, joints };
  const tried = jointForCut.try(input);
  if (tried.ok && compare(tried.solution.answers.joint, joint.least) >= 0 && compare(tried.solution.answers.joint, joint.wanted) <= 0 && compare(leastCut, smaller) < 0) {
    const { joint: narrower } = work.part(jointForCut, input).answers;
    return { joint: narrower, whole, cuts, cut: leastCut };
  }
  tooSmall.push(say(cuts === 1 ? "oneCutTooSmall" : "twoCutTooSmall", { called, leastCut }));
  return undefined;
}

function leastCutOf(unit: Length, joint: Length, work: Work): Length {
  work.assume(`leastCut: ${usualLeastCut.says}`);
  work.stand(usualLeastCut);
  return work.part(halfUnit, { unit, joint }).answers.half;
}
