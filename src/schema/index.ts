/**
 * Schemas of inputs and answers: zod and JSON Schema, from the same definition as everything else.
 *
 * @packageDocumentation
 */
export { type FieldRow, type QuantityInput, quantityField, type QuantityField, telling } from "./fields.js";
export { jsonSchemaOf } from "./json-schema.js";
export { type Nested, nested } from "./nested.js";
export { schemaOf } from "./schema-of.js";
export type { JsonSchema } from "./schema-head.js";
