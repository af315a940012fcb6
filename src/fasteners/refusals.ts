import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

/** Level of a wind speed or a pressure. */
type Level = "strength" | "allowable";

/** Words why the functions for fasteners refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("fasteners", {
  endsPastStud: ({ width, past }: { width: Quantity; past: Quantity }) => sentence`a board ${width} wide ends ${past} past a stud`,
  backTheEdges: () => "a line of screws at that edge would hit no steel; back the edges (edgesBacked: true)",
  backTheEdgesOrCut: ({ cutTo }: { cutTo: Quantity }) => sentence`a line of screws at that edge would hit no steel; back the edges (edgesBacked: true) or cut the board to ${cutTo}, a whole number of stud spacings`,
  strengthLevelBy: ({ edition }: { edition: string }) => sentence`strength level by ${edition}`,
  onlyAllowableLevel: () => "its pressures are at allowable level, and no step to strength level is on file; ask for the allowable level",
  giveSteel: () => "give the steel by its mils, or its design thickness",
  boardUnderHead: () => "a board under the head",
  steelOnSteel: () => "the equations hold for steel on steel; what a board holds at a screw head is a test value, so ask its maker for it",
  pressureAtStrength: () => "a pressure at strength level",
  screwsAtAllowable: () => 'the loads of the screws are at allowable level; give the pressure at that level (claddingPressure with level: "allowable")',
  speedAtLevel: ({ level }: { level: Level }) => sentence`a speed at ${level} level`,
  mapsGiveLevel: ({ edition, level }: { edition: string; level: Level }) => sentence`the maps of ${edition} give speeds at ${level} level; take the speed from the map of the edition named`,
  noSuchFactor: ({ edition }: { edition: string }) => sentence`${edition} has no such factor; leave it out`,
  hasThisFactor: ({ edition }: { edition: string }) => sentence`${edition} has this factor; write a number`,
});
