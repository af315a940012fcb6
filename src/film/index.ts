/**
 * Films of coating, wet and dry: how thick, how far a pack goes, how many to order, and whether the readings pass.
 *
 * @packageDocumentation
 */
export { coatingOrder } from "./coating-order.js";
export { dryFilm } from "./dry-film.js";
export { wetFilm } from "./wet-film.js";
