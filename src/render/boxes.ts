import type { Formula } from "../core/formula.js";
import type { Figure } from "../core/working.js";
import type { SymbolText } from "./section.js";

/** Signs between parts of a formula; each target has its own letter for them. */
export type Sign = "+" | "-" | "*" | "/" | "=" | "≈" | ",";

/** The pairs of brackets that stand round a part. */
export type Fence = "round" | "ceiling" | "floor";

/** A formula as it is typeset: parts side by side, over, in, above each other. */
export type Box =
  | { readonly kind: "row"; readonly of: readonly Box[] }
  | { readonly kind: "number" | "word" | "unit" | "blank"; readonly text: string }
  | { readonly kind: "sign"; readonly sign: Sign }
  | { readonly kind: "pi" }
  | { readonly kind: "symbol"; readonly letter: string; readonly below: string; readonly prime: boolean }
  | { readonly kind: "fraction"; readonly above: Box; readonly below: Box }
  | { readonly kind: "root"; readonly of: Box }
  | { readonly kind: "raised"; readonly base: Box; readonly exponent: Box }
  | { readonly kind: "fence"; readonly fence: Fence; readonly of: Box }
  | { readonly kind: "function"; readonly name: string; readonly below: string };

/** What stands for a name in a formula: words, a symbol or a figure. */
export type Leaf = (name: string) => string | SymbolText | Figure;

/** How strongly a part binds on paper. A fraction bar and a root sign hold together what stands in them. */
const strength = { sum: 1, product: 2, negate: 3, power: 4, whole: 5, base: 6 } as const;

/** A part with how strongly it binds. */
interface Set {
  readonly box: Box;
  readonly strength: number;
}

/** Functions as they are printed, where that is not the name itself. */
const printed: Partial<Record<string, readonly [name: string, below: string]>> = { log10: ["log", "10"], asin: ["arcsin", ""] };

/** Lays a formula out as it is typeset, with no more brackets than it needs there. */
export function formulaBox(formula: Formula, leaf: Leaf): Box {
  return set(formula, leaf).box;
}

/** A figure with its unit. */
export function figureBox({ number, unit }: Figure): Box {
  const box: Box = { kind: "number", text: number };
  const signed: Box = number.startsWith("-") ? row({ kind: "sign", sign: "-" }, { kind: "number", text: number.slice(1) }) : box;
  return unit === "" ? signed : row(signed, { kind: "unit", text: unit });
}

/** A name in words, or a symbol with its subscript. */
export function nameBox(name: string | SymbolText): Box {
  if (typeof name === "string") return { kind: "word", text: inWords(name) };
  const [, letter = name.symbol, below = "", prime = ""] = /^(\p{L}+)(?:_([\p{L}\d]+))?('?)$/u.exec(name.symbol) ?? [];
  return { kind: "symbol", letter, below, prime: prime !== "" };
}

/** Boxes side by side. */
export function row(...of: readonly Box[]): Box {
  return { kind: "row", of };
}

/** `coefficientAt10` as `coefficient at 10`. */
function inWords(name: string): string {
  return name.replace(/[A-Z]|\d+/g, (part) => ` ${part.toLowerCase()}`);
}

function set(formula: Formula, leaf: Leaf): Set {
  const at = (part: Formula, place: number): Box => {
    const { box, strength: own } = set(part, leaf);
    return own < place ? fenced("round", box) : box;
  };
  switch (formula.kind) {
    case "number":
      return { box: { kind: "number", text: formula.digits }, strength: strength.base };
    case "pi":
      return { box: { kind: "pi" }, strength: strength.base };
    case "name":
      return leafSet(leaf(formula.name));
    case "negate":
      return { box: row({ kind: "sign", sign: "-" }, at(formula.of, strength.power)), strength: strength.negate };
    case "sum":
      return { box: row(at(formula.left, strength.sum), { kind: "sign", sign: formula.operator }, at(formula.right, notSigned(formula.right, leaf, strength.product))), strength: strength.sum };
    case "product":
      if (formula.operator === "/") return { box: { kind: "fraction", above: at(formula.left, 0), below: at(formula.right, 0) }, strength: strength.whole };
      return { box: row(at(formula.left, strength.product), { kind: "sign", sign: "*" }, at(formula.right, notSigned(formula.right, leaf, formula.right.kind === "product" ? strength.power : strength.negate))), strength: strength.product };
    case "power":
      return { box: { kind: "raised", base: at(formula.base, strength.base), exponent: exponentBox(formula.exponent) }, strength: strength.power };
    case "call":
      return callSet(formula, (part) => at(part, 0));
  }
}

/** After another sign, what begins with a minus stands in brackets. */
function notSigned(formula: Formula, leaf: Leaf, place: number): number {
  const begins = (box: Box | undefined): boolean => box?.kind === "sign" || (box?.kind === "row" && begins(box.of[0]));
  return begins(set(formula, leaf).box) ? strength.whole : place;
}

function leafSet(value: string | SymbolText | Figure): Set {
  if (typeof value === "string" || "symbol" in value) {
    const box = nameBox(value);
    return { box, strength: box.kind === "symbol" ? strength.base : strength.whole };
  }
  const box = figureBox(value);
  return { box, strength: value.number.startsWith("-") ? strength.negate : value.unit === "" ? strength.base : strength.whole };
}

/** `2 / 9.5` as it stands in a raised place. */
function exponentBox(text: string): Box {
  const parts = text.split(" / ").map((digits) => figureBox({ number: digits, unit: "", exact: true }));
  const [first = row(), second] = parts;
  return second === undefined ? first : row(first, { kind: "sign", sign: "/" }, second);
}

function callSet(formula: Extract<Formula, { readonly kind: "call" }>, at: (part: Formula) => Box): Set {
  const [first = row(), ...others] = formula.of.map(at);
  switch (formula.function) {
    case "sqrt":
      return { box: { kind: "root", of: first }, strength: strength.whole };
    case "ceil":
      return { box: fenced("ceiling", first), strength: strength.base };
    case "floor":
      return { box: fenced("floor", first), strength: strength.base };
    default: {
      const [name, below] = printed[formula.function] ?? [formula.function, ""];
      const list = others.flatMap((one): Box[] => [{ kind: "sign", sign: "," }, one]);
      return { box: row({ kind: "function", name, below }, fenced("round", row(first, ...list))), strength: strength.whole };
    }
  }
}

function fenced(fence: Fence, of: Box): Box {
  return { kind: "fence", fence, of };
}
