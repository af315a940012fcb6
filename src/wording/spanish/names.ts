import { boards } from "./names/boards.js";
import { fasteners } from "./names/fasteners.js";
import { film } from "./names/film.js";
import { joints } from "./names/joints.js";
import { layout } from "./names/layout.js";
import { limits } from "./names/limits.js";
import { many } from "./names/many.js";
import { membrane } from "./names/membrane.js";
import { mortar } from "./names/mortar.js";
import { movement } from "./names/movement.js";
import { planning } from "./names/planning.js";
import { shapes } from "./names/shapes.js";
import { shared } from "./names/shared.js";
import { sheet } from "./names/sheet.js";
import { takeoff } from "./names/takeoff.js";
import { timing } from "./names/timing.js";
import { weather } from "./names/weather.js";

/** The names of inputs and steps in Spanish, by their English words. */
export const spanishNames = { ...boards, ...fasteners, ...film, ...joints, ...layout, ...limits, ...many, ...membrane, ...mortar, ...movement, ...planning, ...shapes, ...shared, ...sheet, ...takeoff, ...timing, ...weather };
