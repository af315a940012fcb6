import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Trips of a hoist for the packs of one item, whole packs a trip.
 *
 * @example
 * ```ts
 * hoistTrips({ packs: 28, packMass: "50 lb", hoistLoad: "440 lb" }).trips.toString(); // "4"
 * ```
 */
export const hoistTrips = /* @__PURE__ */ calculation({
  id: "takeoff.hoist-trips",
  title: "Trips of a hoist",
  given: {
    packs: { is: "count", symbol: "n", says: "packs to lift; pieces where there are no packs", atLeast: 1, whole: true },
    packMass: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "weight of one of them as delivered", above: 0 },
    hoistLoad: { is: "mass", unit: ["lb", "kg"], symbol: "m_h", says: "what the hoist may lift at a time, from its plate", above: 0 },
  },
  steps: {
    packsPerTrip: { is: "count", symbol: "k", says: "whole packs in a trip", formula: "floor(hoistLoad / packMass)", basis: arithmetic, atLeast: 1 },
    trips: { is: "count", symbol: "t", says: "trips", formula: "ceil(packs / packsPerTrip)", basis: arithmetic },
  },
  cautions: ["The plate of the hoist and its operator go before this; nobody stands under a load, and a deck takes only what it is rated for."],
});
