import type { boardsRefusals } from "../boards/refusals.js";
import type { commonRefusals } from "../core/common-refusals.js";
import type { Refusals } from "../core/refusals.js";
import type { exerciseRefusals } from "../exercise/refusals.js";
import type { fastenersRefusals } from "../fasteners/refusals.js";
import type { filmRefusals } from "../film/refusals.js";
import type { jointsRefusals } from "../joints/refusals.js";
import type { layoutRefusals } from "../layout/refusals.js";
import type { limitsRefusals } from "../limits/refusals.js";
import type { manyRefusals } from "../many/refusals.js";
import type { membraneRefusals } from "../membrane/refusals.js";
import type { mortarRefusals } from "../mortar/refusals.js";
import type { movementRefusals } from "../movement/refusals.js";
import type { picturesRefusals } from "../pictures/refusals.js";
import type { planningRefusals } from "../planning/refusals.js";
import type { schemaRefusals } from "../schema/refusals.js";
import type { shapesRefusals } from "../shapes/refusals.js";
import type { sheetRefusals } from "../sheet/reading/refusals.js";
import type { takeoffRefusals } from "../takeoff/refusals.js";
import type { timingRefusals } from "../timing/refusals.js";
import type { weatherRefusals } from "../weather/refusals.js";

/** The same refusals in another language: every name of the English, each with the same values. */
type Worded<R extends Refusals> = { readonly [Name in keyof R]: (...values: Parameters<R[Name]>) => string };

/**
 * Every refusal that only one topic knows, by topic and name, as a function of its values. Who words them in a language of
 * his own writes an object of this type: the compiler names what is missing, and what its values are.
 */
export interface RefusalTexts {
  readonly boards: Worded<typeof boardsRefusals>;
  readonly common: Worded<typeof commonRefusals>;
  readonly exercise: Worded<typeof exerciseRefusals>;
  readonly fasteners: Worded<typeof fastenersRefusals>;
  readonly film: Worded<typeof filmRefusals>;
  readonly joints: Worded<typeof jointsRefusals>;
  readonly layout: Worded<typeof layoutRefusals>;
  readonly limits: Worded<typeof limitsRefusals>;
  readonly many: Worded<typeof manyRefusals>;
  readonly membrane: Worded<typeof membraneRefusals>;
  readonly mortar: Worded<typeof mortarRefusals>;
  readonly movement: Worded<typeof movementRefusals>;
  readonly pictures: Worded<typeof picturesRefusals>;
  readonly planning: Worded<typeof planningRefusals>;
  readonly schema: Worded<typeof schemaRefusals>;
  readonly shapes: Worded<typeof shapesRefusals>;
  readonly sheet: Worded<typeof sheetRefusals>;
  readonly takeoff: Worded<typeof takeoffRefusals>;
  readonly timing: Worded<typeof timingRefusals>;
  readonly weather: Worded<typeof weatherRefusals>;
}
