/**
 * Every calculation and composed function in one list: for tests, documentation and those who look for a name. An app
 * that imports one calculation does not carry it.
 *
 * @packageDocumentation
 */
import * as boards from "./boards/index.js";
import type { Callable } from "./core/calculation.js";
import * as fasteners from "./fasteners/index.js";
import * as film from "./film/index.js";
import * as joints from "./joints/index.js";
import * as layout from "./layout/index.js";
import * as membrane from "./membrane/index.js";
import * as mortar from "./mortar/index.js";
import * as shapes from "./shapes/index.js";
import * as takeoff from "./takeoff/index.js";
import * as timing from "./timing/index.js";

/** A calculation or a composed function of the catalogue, whatever it is given. */
export type Listed = Callable<never, unknown>;

const topics: readonly object[] = [boards, fasteners, film, joints, layout, membrane, mortar, shapes, takeoff, timing];

/** Everything that can be called, by topic. */
export const catalogue: readonly Listed[] = /* @__PURE__ */ (() =>
  Object.freeze(topics.flatMap((topic) => Object.values(topic).filter((one): one is Listed => typeof one === "function" && "solve" in one))))();
