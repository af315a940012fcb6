import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { composed, type Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import { filmFromUsage } from "../film/film-from-usage.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { bedFromUsage } from "./bed-from-usage.js";
import { overWhole } from "./over-whole.js";
import { wasteFromUsage } from "./waste-from-usage.js";
import { waterFromUsage } from "./water-from-usage.js";

/** One item, what was planned and what the empties prove. */
export interface UsedAgainstPlan {
  readonly name: string;
  readonly of: "film" | "bed" | "water" | "waste";
  /** Planned: dry film, bed, the low figure for the water of a bag, or waste. */
  readonly planned: Quantity;
  /** Water alone: the high figure on the bag. */
  readonly most?: Quantity<"volume">;
  readonly actual: Quantity;
  readonly is: "as planned" | "less than planned" | "more than planned";
  readonly says: string;
}

const above = 0;
const named = /* @__PURE__ */ atFirstUse(() => ({ name: telling("name of what was used", z.string()) }));
const bags = (says: string): ReturnType<typeof quantityField<"count">> => quantityField("count", { says, above });
const volume = (says: string): ReturnType<typeof quantityField<"volume">> => quantityField("volume", { says, above });
const lossShare = (): ReturnType<typeof quantityField<"ratio">> => quantityField("ratio", { says: "share of what was used that did not end on the wall", atLeast: 0, below: 1 });
const tolerance = (): ReturnType<typeof quantityField<"ratio">> => quantityField("ratio", { says: "how far from the plan still counts as planned, as a share of it", atLeast: 0, below: 1 });

const item = /* @__PURE__ */ atFirstUse(() =>
  z.discriminatedUnion("of", [
    z.strictObject({
      of: z.literal("film"), ...named(), volumeUsed: volume("coating used, by empty pails, before thinning"), area: quantityField("area", { says: "area it went on, returns in", above }),
      lossShare: lossShare(), volumeSolids: quantityField("ratio", { says: "solids by volume, from the data sheet", above, atMost: 1 }), coats: quantityField("count", { says: "coats", atLeast: "1" }),
      specified: quantityField("length", { says: "dry film specified for all coats", above }), tolerance: tolerance(),
    }),
    z.strictObject({
      of: z.literal("bed"), ...named(), bagsUsed: bags("bags emptied for this area"), bagYield: volume("mortar that one bag gives"), lossShare: lossShare(),
      area: quantityField("area", { says: "stone face that was set", above }), plannedBed: quantityField("length", { says: "bed and back-butter together that were planned", above }), tolerance: tolerance(),
    }),
    z.strictObject({ of: z.literal("water"), ...named(), bagsUsed: bags("bags mixed"), water: volume("all water that went into them"), waterLow: volume("least water for a full bag"), waterHigh: volume("most water for a full bag") }),
    z.strictObject({
      of: z.literal("waste"), ...named(), bought: bags("packs bought"), leftOver: quantityField("count", { says: "packs left over", atLeast: 0 }), netPacks: bags("packs that the work takes net"),
      waste: quantityField("ratio", { says: "waste that was planned, on top of the net", atLeast: 0, below: 1 }), tolerance: quantityField("ratio", { says: "how far from the planned waste still counts as planned, of the net", atLeast: 0, below: 1 }),
    }),
  ]));

const input = /* @__PURE__ */ atFirstUse(() => z.strictObject({ items: readOnly(telling("what was used, and what was planned of it", z.array(item()))) }));

type ItemRead = z.output<ReturnType<typeof item>>;

/**
 * What was used against what was planned, from counts of empty pails, bags and packs: film, bed, water and waste. How far off
 * still counts as planned is given with each; for water it is what stands on the bag.
 *
 * @example
 * ```ts
 * const { items } = usedAgainstPlan({ items: [
 *   { of: "bed", name: "setting bed", bagsUsed: 36, bagYield: "0.5 ft3", lossShare: "10 %", area: "480 ft2", plannedBed: "1/2 in", tolerance: "10 %" },
 *   { of: "waste", name: "flat units", bought: 66, leftOver: 3, netPacks: 60, waste: "10 %", tolerance: "2 %" },
 * ] });
 * items[0].is; // "less than planned"
 * items[1].actual.toString(); // "5 %"
 * ```
 */
export const usedAgainstPlan = /* @__PURE__ */ composed({
  id: "planning.used-against-plan",
  title: "What was used against the plan",
  reads: /* @__PURE__ */ nested(input),
  cautions: ["Empties prove a mean and no place: readings and lifted units prove the rest. Count empties before the skip is emptied."],
  run: ({ items }, work): { readonly items: readonly UsedAgainstPlan[] } => {
    if (items.length === 0 || items.length > 1000) work.refuse(refusal(["items"], common("counted", { count: items.length, of: "items" }), common("fromOneTo", { most: 1000 })));
    return { items: items.map((one, index) => judge(one, work, ["items", index])) };
  },
});

const words = {
  film: { less: "thinner than planned on the mean: look for what is short before it is covered", more: "thicker than planned on the mean: check the area and the pails, or it was laid on heavily" },
  bed: { less: "thinner than planned on the mean: lift a unit and look at its contact", more: "thicker than planned on the mean: hollows in the wall, joints filled from the bed, or more lost than planned" },
  waste: { less: "less lost than planned, or the net was counted too high", more: "more lost than planned, or the net was counted too low" },
} as const;

function judge(one: ItemRead, work: Work, at: Path): UsedAgainstPlan {
  if (one.of === "water") return judgeWater(one, work, at);
  const { of, name, tolerance: within } = one;
  const told = (planned: Quantity, actual: Quantity, off: Quantity<"ratio">): UsedAgainstPlan => {
    const is = compare(off, within) > 0 ? "more" : compare(off, subtract(subtract(within, within), within)) < 0 ? "less" : undefined;
    return { name, of, planned, actual, is: is === undefined ? "as planned" : `${is} than planned`, says: is === undefined ? "as planned, within what was given" : words[of][is] };
  };
  if (one.of === "film") {
    const { volumeUsed, area, lossShare: lost, volumeSolids, coats, specified } = one;
    const { dryBuild, builtShare } = work.part(filmFromUsage, { volumeUsed, area, lossShare: lost, volumeSolids, coats, specified }, at).answers;
    return told(specified, dryBuild, overWhole(builtShare));
  }
  if (one.of === "bed") {
    const { bagsUsed, bagYield, lossShare: lost, area, plannedBed } = one;
    const { meanBed, ofPlanned } = work.part(bedFromUsage, { bagsUsed, bagYield, lossShare: lost, area, plannedBed }, at).answers;
    return told(plannedBed, meanBed, overWhole(ofPlanned));
  }
  const { bought, leftOver, netPacks, waste } = one;
  const { actualWaste, overPlanned } = work.part(wasteFromUsage, { bought, leftOver, netPacks, waste }, at).answers;
  return told(waste, actualWaste, overPlanned);
}

function judgeWater({ name, bagsUsed, water, waterLow, waterHigh }: Extract<ItemRead, { of: "water" }>, work: Work, at: Path): UsedAgainstPlan {
  const { waterPerBag } = work.part(waterFromUsage, { bagsUsed, water, waterLow, waterHigh }, at).answers;
  const row = { name, of: "water", planned: waterLow, most: waterHigh, actual: waterPerBag } as const;
  if (compare(waterPerBag, waterHigh) > 0) return { ...row, is: "more than planned", says: "more water than the bag allows, on the mean: weaker, more shrinkage, less bond" };
  if (compare(waterPerBag, waterLow) < 0) return { ...row, is: "less than planned", says: "less water than the bag asks, on the mean: check the count of bags and of water" };
  return { ...row, is: "as planned", says: "within the figures on the bag, on the mean" };
}
