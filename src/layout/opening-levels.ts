import { common } from "../core/common-refusals.js";
import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { usualJointChange, usualLeastCut, usualSpread } from "../data/layout.js";
import type { ReadHeadsAndSills } from "./heads-and-sills-input.js";
import { say } from "./refusals.js";

type Length = Quantity<"length">;

/** A level before it is held against the courses. */
export interface Level {
  readonly opening: string;
  readonly is: "sill" | "head";
  readonly height: Length;
}

/** How errors are spent. */
export interface SpendingRules {
  readonly spreadOver: number;
  readonly jointChange: Length;
  readonly leastCut: Length | undefined;
  readonly bedJoint: Length;
}

/** The heads and sills, from the lowest up; it ends the run where they make no sense. */
export function levelsOf({ openings, unitHeights }: ReadHeadsAndSills, work: Work): readonly Level[] {
  if (unitHeights.length === 0 || unitHeights.length > 100) work.problem(refusal(["unitHeights"], common("counted", { count: unitHeights.length, of: "heights" }), common("heightsOfUnits")));
  openings.forEach(({ sill, head }, index) => {
    if (sill === undefined && head === undefined) work.problem({ code: "missing", path: ["openings", index], given: "", wanted: say("sillHeadOrBoth") });
    if (sill !== undefined && head !== undefined && compare(head, sill) <= 0) work.problem({ code: "tooLow", path: ["openings", index, "head"], given: head.toString(), wanted: say("headUnderSill", { sill }) });
  });
  const levels = openings.flatMap(({ name, sill, head }, index) => {
    const opening = name ?? `opening ${String(index + 1)}`;
    return [...(sill === undefined ? [] : [{ opening, is: "sill" as const, height: sill }]), ...(head === undefined ? [] : [{ opening, is: "head" as const, height: head }])];
  });
  if (levels.length === 0 || levels.length > 1000) work.refuse(refusal(["openings"], common("counted", { count: levels.length, of: "heads and sills" }), say("oneTo", { most: 1000 })));
  const [highest] = [...levels].sort((one, other) => compare(other.height, one.height));
  const [lowest] = [...unitHeights].sort(compare);
  if (highest !== undefined && lowest !== undefined && compare(highest.height, times(lowest, 1000)) > 0) work.refuse({ code: "tooHigh", path: ["openings"], given: highest.height.toString(), wanted: say("withinCourses", { most: 1000 }) });
  return levels.sort((one, other) => compare(one.height, other.height));
}

/** How errors are spent; what is not given is common practice. */
export function rulesOf({ spreadOver, jointChange, leastCut, bedJoint }: ReadHeadsAndSills, work: Work): SpendingRules {
  if (spreadOver !== undefined && !spreadOver.to().isInteger()) work.refuse({ code: "refused", path: ["spreadOver"], given: spreadOver.toString(), wanted: common("writeWhole") });
  for (const [name, given, usual] of [["spreadOver", spreadOver, usualSpread], ["jointChange", jointChange, usualJointChange], ["leastCut", leastCut, usualLeastCut]] as const) {
    if (given !== undefined) continue;
    work.assume(`${name}: ${usual.says}`);
    work.stand(usual);
  }
  return { spreadOver: spreadOver?.toNumber() ?? 10, jointChange: jointChange ?? quantity("length", "1/16 in"), leastCut, bedJoint };
}
