import { film } from "./names/film.js";
import { joints } from "./names/joints.js";
import { shared } from "./names/shared.js";

/** The names of inputs and steps in Spanish, by their English words. */
export const spanishNames = { ...film, ...joints, ...shared };
