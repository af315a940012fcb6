// What is on a deck, by hand.
import { describe, expect, it } from "vitest";
import { deckStock } from "../../src/limits/deck-stock.js";
import { faults } from "../support/faults.js";

const bay = { faceArea: "50 ft2", weight: "15 psf", deckArea: "35 ft2", besides: "500 lb", allowedLoad: "50 psf" } as const;

describe("deckStock", () => {
  it("adds what is stacked and what stands there, and holds it against the plate", () => {
    // 50 x 15 = 750 lb, and 500: 1,250 lb; 35 x 50 = 1,750 lb, so 5/7. Room for 1,250 lb of stone: 83-1/3 ft2 of face.
    const { stock, onDeck, capacity, used, mostFace } = deckStock(bay);
    expect([stock, onDeck, capacity].map(String)).toEqual(["750 lb", "1250 lb", "1750 lb"]);
    expect([used.to("%").toFixed(2), mostFace.to("ft2").toFixed(3)]).toEqual(["71.43", "83.333"]);
  });

  it("goes over a whole where there is too much, and tells it", () => {
    // 100 x 15 = 1,500 lb, and 500: 2,000 of 1,750 lb.
    expect(deckStock({ ...bay, faceArea: "100 ft2" }).used.to("%").toFixed(1)).toBe("114.3");
  });

  it("has no room where people and tubs are over the plate by themselves", () => {
    expect(faults(deckStock.try({ ...bay, besides: "1751 lb" }))).toEqual(["tooLow room"]);
    expect(deckStock({ ...bay, besides: "1750 lb" }).mostFace.toString()).toBe("0 ft2");
  });
});
