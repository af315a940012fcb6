/**
 * The engine and every topic. The whole-wall take-off, renderers, schemas and the catalogue are entries of their own.
 *
 * @packageDocumentation
 */
export * from "./core/index.js";
export * from "./boards/index.js";
export * from "./fasteners/index.js";
export * from "./film/index.js";
export * from "./joints/index.js";
export * from "./layout/index.js";
export * from "./limits/index.js";
export * from "./membrane/index.js";
export * from "./mortar/index.js";
export * from "./movement/index.js";
export * from "./shapes/index.js";
export * from "./timing/index.js";
export * from "./weather/index.js";
