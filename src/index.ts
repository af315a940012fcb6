/**
 * Everything but the whole-wall take-off, renderers, schemas and the catalogue, which are entries of their own.
 *
 * @packageDocumentation
 */
export * from "./core/index.js";
