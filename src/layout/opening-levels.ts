import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { usualJointChange, usualLeastCut, usualSpread } from "../data/layout.js";
import type { ReadHeadsAndSills } from "./heads-and-sills-input.js";

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
  if (unitHeights.length === 0 || unitHeights.length > 100) work.problem({ code: "refused", path: ["unitHeights"], given: `${String(unitHeights.length)} heights`, wanted: "give 1 to 100 heights of units, course by course" });
  openings.forEach(({ sill, head }, index) => {
    if (sill === undefined && head === undefined) work.problem({ code: "missing", path: ["openings", index], given: "", wanted: "give a sill, a head or both" });
    if (sill !== undefined && head !== undefined && compare(head, sill) <= 0) work.problem({ code: "tooLow", path: ["openings", index, "head"], given: head.toString(), wanted: `above the sill, ${sill.toString()}` });
  });
  const levels = openings.flatMap(({ name, sill, head }, index) => {
    const opening = name ?? `opening ${String(index + 1)}`;
    return [...(sill === undefined ? [] : [{ opening, is: "sill" as const, height: sill }]), ...(head === undefined ? [] : [{ opening, is: "head" as const, height: head }])];
  });
  if (levels.length === 0 || levels.length > 1000) work.refuse({ code: "refused", path: ["openings"], given: `${String(levels.length)} heads and sills`, wanted: "give 1 to 1000" });
  const [highest] = [...levels].sort((one, other) => compare(other.height, one.height));
  const [lowest] = [...unitHeights].sort(compare);
  if (highest !== undefined && lowest !== undefined && compare(highest.height, times(lowest, 1000)) > 0) work.refuse({ code: "tooHigh", path: ["openings"], given: highest.height.toString(), wanted: "within 1000 courses of the base line" });
  return levels.sort((one, other) => compare(one.height, other.height));
}

/** How errors are spent; what is not given is common practice. */
export function rulesOf({ spreadOver, jointChange, leastCut, bedJoint }: ReadHeadsAndSills, work: Work): SpendingRules {
  if (spreadOver !== undefined && !spreadOver.to().isInteger()) work.refuse({ code: "refused", path: ["spreadOver"], given: spreadOver.toString(), wanted: "write a whole number" });
  for (const [name, given, usual] of [["spreadOver", spreadOver, usualSpread], ["jointChange", jointChange, usualJointChange], ["leastCut", leastCut, usualLeastCut]] as const) {
    if (given !== undefined) continue;
    work.assume(`${name}: ${usual.says}`);
    work.stand(usual);
  }
  return { spreadOver: spreadOver?.toNumber() ?? 10, jointChange: jointChange ?? quantity("length", "1/16 in"), leastCut, bedJoint };
}
