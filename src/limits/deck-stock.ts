import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * What is stacked on a deck for so much face, against the load that the deck's designer allows, and the face that may be
 * stocked at once.
 *
 * @example
 * ```ts
 * const bay = deckStock({ faceArea: "60 ft2", weight: "14 psf", deckArea: "35 ft2", besides: "500 lb", allowedLoad: "50 psf" });
 * bay.stock.toString(); // "840 lb"
 * bay.used.to("%").toFixed(1); // "76.6"
 * bay.mostFace.to("ft2").toFixed(1); // "89.3"
 * ```
 */
export const deckStock = /* @__PURE__ */ calculation({
  id: "limits.deck-stock",
  title: "Stock on a deck",
  given: {
    faceArea: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "face whose stone and mortar are stacked on the deck, such as a day's", above: 0 },
    weight: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "W", says: "weight of stone and mortar per area of face, wet", above: 0 },
    deckArea: { is: "area", unit: ["ft2", "m2"], symbol: "A_d", says: "area of the deck", above: 0 },
    besides: { is: "mass", unit: ["lb", "kg"], symbol: "m_b", says: "people, tools, tubs and water on it besides", atLeast: 0 },
    allowedLoad: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "W_a", says: "weight per area that the deck may carry by its designer's plate", above: 0 },
  },
  steps: {
    stock: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "stone and mortar on the deck", formula: "faceArea * weight", basis: arithmetic },
    onDeck: { is: "mass", unit: ["lb", "kg"], symbol: "m_d", says: "all that is on the deck", formula: "stock + besides", basis: arithmetic },
    capacity: { is: "mass", unit: ["lb", "kg"], symbol: "m_a", says: "what the deck may carry, spread out even", formula: "allowedLoad * deckArea", basis: arithmetic },
    used: { is: "ratio", unit: "%", symbol: "f", says: "share of that", formula: "onDeck / capacity", basis: arithmetic },
    room: { is: "mass", unit: ["lb", "kg"], symbol: "m_r", says: "room for stone and mortar beside the rest", formula: "capacity - besides", basis: arithmetic, atLeast: 0 },
    mostFace: { is: "area", unit: ["ft2", "m2"], symbol: "A_m", says: "face that may be stocked at once", formula: "room / weight", basis: arithmetic },
  },
  cautions: ["Scaffolds are designed, built and checked by others. An even load is not a pallet on one plank: what a plank or a bay takes in one spot is for the designer's plate to say."],
});
