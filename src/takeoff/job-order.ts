import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { type QuantityInput, nameField, quantityField, telling } from "../schema/fields.js";
import { length } from "./job-elevation.js";
import { moneyField } from "./money.js";

/** How an item is sold: so many pieces, a length, a volume, or a bag with what its sheet says; each item wants its own. */
export const pack = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    pieces: z.optional(quantityField("count", { says: "pieces in a pack", atLeast: "1", whole: true })),
    length: z.optional(length("length of a piece or roll")),
    volume: z.optional(quantityField("volume", { says: "volume of a pack", above: 0 })),
    bag: z.optional(quantityField("mass", { says: "dry mix in a full bag", above: 0 })),
    yield: z.optional(quantityField("volume", { says: "mortar that one bag gives", above: 0 })),
    waterLow: z.optional(quantityField("volume", { says: "least water for a full bag, from the bag", above: 0 })),
    waterHigh: z.optional(quantityField("volume", { says: "most water for a full bag, from the bag", above: 0 })),
  }));

/** What is added for what never ends on the wall: on top of the net, or as a share of what is bought; never both. */
export const allowance = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    waste: z.optional(quantityField("ratio", { says: "waste, on top of the net", atLeast: 0, below: 1 })),
    lossShare: z.optional(quantityField("ratio", { says: "share of what is bought that never ends on the wall", atLeast: 0, below: 1 })),
  }));

/** Pieces kept for repairs, by the name of the item. */
export const spare = /* @__PURE__ */ atFirstUse(() => z.record(nameField(), quantityField("ratio", { says: "spare stock, on top of the net", above: 0, below: 1 })));

/** What weighs how much, and what the hoist may lift at a time. */
export const weights = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    perPack: telling("weights of packs, by the name of the item", z.record(nameField(), quantityField("mass", { says: "weight of one pack as delivered; of one piece where there are no packs", above: 0 }))),
    hoistLoad: z.optional(quantityField("mass", { says: "what the hoist may lift at a time", above: 0 })),
  }));

/** What an item costs: a pack, or each piece where it is sold without packs. */
const price = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    perPack: z.optional(moneyField("price of one pack")),
    each: z.optional(moneyField("price of one piece")),
    markup: z.optional(quantityField("ratio", { says: "markup on this item", atLeast: 0 })),
    taxed: z.optional(telling("whether the item is taxed", z.boolean())),
  }));

/** Prices by the name of the item, all in one currency. */
export const prices = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    smallest: moneyField("smallest amount of the currency, to which each line is rounded"),
    items: telling("prices, by the name of the item", z.record(nameField(), price())),
    markup: z.optional(quantityField("ratio", { says: "markup on every item that has none of its own", atLeast: 0 })),
    allowance: z.optional(telling("allowance for what is not foreseen", z.strictObject({ share: quantityField("ratio", { says: "allowance for what is not foreseen, on top of all lines", atLeast: 0 }), taxed: telling("whether the allowance is taxed", z.boolean()) }))),
    tax: z.optional(quantityField("ratio", { says: "tax on what is taxed", atLeast: 0 })),
  }));

/** The user's own rates: hours at the tool for so much of an item or of a face. */
export const labour = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    efficiency: quantityField("ratio", { says: "share of paid time that is time at the tool", above: 0, atMost: 1 }),
    tasks: telling("tasks, each with your own rate", z.array(
      z.strictObject({
        name: telling("name of the task", nameField()),
        of: telling("item or face that is worked on", nameField()),
        hours: quantityField("time", { says: "hours of one person at the tool", above: 0 }),
        // Of which dimension it is follows from what is worked on, so it is read with that.
        per: telling("amount that the hours are for", z.custom<QuantityInput>(() => true)),
        factor: z.optional(quantityField("ratio", { says: "how many times as long it takes here as the rate says", above: 0, atMost: 20 })),
      }),
    )),
  }));

/** Limits that a reader wants the job held against; they are his, from the specification and the data sheets. */
export const checks = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    weight: z.optional(telling("limit on the weight of layers together", z.strictObject({ layers: telling("layers that are weighed together", z.array(nameField())), most: quantityField("arealMass", { says: "most that these layers may weigh together", above: 0 }) }))),
    wetFilm: z.optional(telling("limits on the wet film of a coat", z.strictObject({ least: length("least wet film of a coat"), most: length("most wet film of a coat") }))),
  }));
