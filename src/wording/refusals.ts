import type { say as boards } from "../boards/refusals.js";
import type { common } from "../core/common-refusals.js";
import type { Refusals, Say } from "../core/refusals.js";
import type { say as exercise } from "../exercise/refusals.js";
import type { say as fasteners } from "../fasteners/refusals.js";
import type { say as film } from "../film/refusals.js";
import type { say as joints } from "../joints/refusals.js";
import type { say as layout } from "../layout/refusals.js";
import type { say as limits } from "../limits/refusals.js";
import type { say as many } from "../many/refusals.js";
import type { say as membrane } from "../membrane/refusals.js";
import type { say as mortar } from "../mortar/refusals.js";
import type { say as movement } from "../movement/refusals.js";
import type { say as pictures } from "../pictures/refusals.js";
import type { say as planning } from "../planning/refusals.js";
import type { say as schema } from "../schema/refusals.js";
import type { say as shapes } from "../shapes/refusals.js";
import type { say as sheet } from "../sheet/reading/refusals.js";
import type { say as takeoff } from "../takeoff/refusals.js";
import type { say as timing } from "../timing/refusals.js";
import type { say as weather } from "../weather/refusals.js";

/** The same refusals in another language: every name of the English, each with the same values. */
type Worded<S extends Say<Refusals>> = { readonly [Name in keyof S["english"]]: (...values: Parameters<S["english"][Name]>) => string };

/**
 * Every refusal that only one topic knows, by topic and name, as a function of its values. Who words them in a language of
 * his own writes an object of this type: the compiler names what is missing, and what its values are.
 */
export interface RefusalTexts {
  readonly boards: Worded<typeof boards>;
  readonly common: Worded<typeof common>;
  readonly exercise: Worded<typeof exercise>;
  readonly fasteners: Worded<typeof fasteners>;
  readonly film: Worded<typeof film>;
  readonly joints: Worded<typeof joints>;
  readonly layout: Worded<typeof layout>;
  readonly limits: Worded<typeof limits>;
  readonly many: Worded<typeof many>;
  readonly membrane: Worded<typeof membrane>;
  readonly mortar: Worded<typeof mortar>;
  readonly movement: Worded<typeof movement>;
  readonly pictures: Worded<typeof pictures>;
  readonly planning: Worded<typeof planning>;
  readonly schema: Worded<typeof schema>;
  readonly shapes: Worded<typeof shapes>;
  readonly sheet: Worded<typeof sheet>;
  readonly takeoff: Worded<typeof takeoff>;
  readonly timing: Worded<typeof timing>;
  readonly weather: Worded<typeof weather>;
}
