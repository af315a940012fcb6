import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const takeoff: SamplesOf<"takeoff"> = {
  cornersWantUnits: { edges: quantity("length", "16 ft") },
  screwedToStuds: { layer: "cement board" },
  nameALayerOfBoards: { of: ["cement board"] },
  jointToFill: { layer: "pointing" },
  fillsJoints: { layer: "pointing" },
  weighLayer: { layer: "stone" },
  leastOverMost: { most: quantity("length", "22 mil") },
  listHas: { of: ["stone", "mortar"] },
  currenciesDiffer: { currency: "USD" },
  itemTaxed: { item: "stone" },
  noPriceFor: { item: "sand" },
  spareOfPieces: { item: "mortar", dimension: "volume" },
  noWeightFor: { item: "sand" },
  openingOf: { width: quantity("length", "12 ft"), height: quantity("length", "4 ft") },
  wallIs: { wall: "north", width: quantity("length", "10 ft"), height: quantity("length", "8 ft") },
  openingsOf: { area: quantity("area", "120 ft2") },
  wallHas: { wall: "north", area: quantity("area", "100 ft2") },
  openingsAtFoot: { width: quantity("length", "12 ft") },
  wallIsWide: { wall: "north", width: quantity("length", "10 ft") },
  wallIsHigh: { wall: "north", height: quantity("length", "8 ft") },
  noSuchWall: { of: ["north", "east"] },
  whatAPackHolds: { keys: ["count"] },
  packKeys: { item: "stone", keys: ["count"] },
};
