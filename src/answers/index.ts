/**
 * What every calculation and composed function answers, as JSON Schema: for who stores answers, or hands them from one
 * program to another.
 *
 * @packageDocumentation
 */
export { answersSchemaOf } from "./answers-schema.js";
