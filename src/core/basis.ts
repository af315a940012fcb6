/**
 * What a value or a formula stands on. A basis is a plain constant, so that a bundle carries only those it uses
 * and a user can write his own beside ours.
 *
 * - `definition`: exact by definition, such as 231 in³ to the US gallon.
 * - `derived`: geometry, statics or arithmetic that a reader can follow.
 * - `published`: printed in a source that is named, with its edition and the place in it.
 * - `common practice`: a fact of the trade, without a source.
 * - `from memory`: recalled and not seen; nothing may depend on it.
 */
export type Basis =
  | { readonly kind: "definition" | "derived" | "common practice" | "from memory"; readonly says: string }
  | {
      readonly kind: "published";
      readonly publisher: string;
      readonly title: string;
      readonly edition: string;
      readonly locator: string;
      /** Who quotes it, where the source itself was not seen. */
      readonly quotedBy?: string;
      /** What the source says, where the locator alone does not tell. */
      readonly says?: string;
    };

/**
 * A basis as one line of text.
 *
 * @example
 * ```ts
 * basisText({ kind: "common practice", says: "joints of 3/8 in" }); // "common practice: joints of 3/8 in"
 * ```
 */
export function basisText(basis: Basis): string {
  if (basis.kind !== "published") return `${basis.kind}: ${basis.says}`;
  const { publisher, title, edition, locator, quotedBy, says } = basis;
  const quoted = quotedBy === undefined ? "" : `, as quoted by ${quotedBy}`;
  const said = says === undefined ? "" : ` (${says})`;
  return `${publisher}, ${title}, ${edition}, ${locator}${quoted}${said}`;
}
