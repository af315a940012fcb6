// Reads presentation MathML back into a formula, by what can be seen on paper alone: groups that show no brackets are
// taken apart. An XML parser of general use reads the elements.
import { DOMParser, type Element } from "@xmldom/xmldom";
import { type Formula, type FunctionName, functionNames } from "../../src/core/formula.js";

/** What a formula shows: its tree, and the unit behind each number, in the order in which they stand. */
export interface ReadFormula {
  readonly formula: Formula;
  readonly units: readonly string[];
}

/** What a name in words or a symbol with its subscript, as `t_h`, stands for. */
export type Names = ReadonlyMap<string, string>;

const printedFunctions: Readonly<Record<string, FunctionName>> = { arcsin: "asin", log10: "log10", ...Object.fromEntries(functionNames.filter((name) => name !== "asin" && name !== "log10").map((name) => [name, name])) };
const transparent = ["mrow", "mstyle", "mpadded", "semantics", "math", "mtr", "mtd"];

/** The elements of a text in XML; what is not well-formed is refused. */
export function readXml(text: string): Element {
  const refuse = (level: string, message: unknown): never => {
    throw new Error(`${level}: ${String(message)}`);
  };
  const root = new DOMParser({ onError: refuse }).parseFromString(text, "text/xml").documentElement;
  if (root === null) throw new Error("there is no element");
  return root;
}

/** The elements within an element. */
export function within(element: Element): readonly Element[] {
  return Array.from(element.childNodes).filter((node): node is Element => node.nodeType === 1);
}

const textOf = (element: Element): string => (element.textContent ?? "").replaceAll("\u00a0", " ").trim();

/** What can be seen, one thing after the other; an annotation is not seen, nor the sign for a function that is applied. */
function seen(element: Element): readonly Element[] {
  if (element.localName === "annotation") return [];
  if (element.localName === "mo" && textOf(element) === "\u2061") return [];
  if (element.localName === "mspace" || (element.localName === "mtext" && textOf(element) === "")) return [];
  return transparent.includes(element.localName ?? "") ? within(element).flatMap(seen) : [element];
}

/** Splits what is seen at signs of equality, none of which stands within a formula. */
export function sides(element: Element): readonly { readonly sign: string; readonly parts: readonly Element[] }[] {
  const all: { sign: string; parts: Element[] }[] = [{ sign: "", parts: [] }];
  for (const one of seen(element)) {
    if (one.localName === "mo" && ["=", "≈"].includes(textOf(one))) all.push({ sign: textOf(one), parts: [] });
    else all[all.length - 1]?.parts.push(one);
  }
  return all;
}

/** Reads a formula from one element. */
export function readMathml(element: Element, names: Names): ReadFormula {
  return readParts(seen(element), names);
}

/** A symbol as text: `t_h`, `d_w'`, `log10`. */
function symbolText(element: Element): string {
  const [base, ...scripts] = within(element).map((one) => seen(one).map((part) => (part.localName?.startsWith("ms") === true ? symbolText(part) : textOf(part))).join(""));
  if (base === undefined) return textOf(element);
  const prime = scripts.some((script) => /^[′']$/.test(script)) ? "'" : "";
  const below = scripts.filter((script) => !/^[′']$/.test(script)).join("");
  return `${base}${below === "" ? "" : `_${below}`}${prime}`;
}

const raised: Readonly<Record<string, string>> = { "²": "2", "³": "3", "¹": "1", "⁰": "0", "⁴": "4", "⁵": "5", "⁻": "-", "·": "." };

/** A unit as it is typed. */
function plainUnit(text: string): string {
  return text.replace(/[²³¹⁰⁴⁵⁻·]/g, (letter) => raised[letter] ?? letter).replace("µ", "u").replace(/°(?=[FC])/, "deg").replace("°", "deg");
}

/** Reads a row of things that are seen. */
export function readParts(parts: readonly Element[], names: Names): ReadFormula {
  const units: string[] = [];
  let next = 0;
  const fail = (why: string): never => {
    throw new Error(`${why} at ${String(next)} of ${parts.map((one) => `${one.localName ?? ""} ${textOf(one)}`).join(", ")}`);
  };
  const sign = (): string => (parts[next]?.localName === "mo" ? textOf(parts[next] as Element) : "");
  const taken = (signs: readonly string[]): string | undefined => {
    const here = sign();
    if (!signs.includes(here)) return undefined;
    next += 1;
    return here;
  };
  const inner = (element: Element): Formula => {
    const read = readParts(seen(element), names);
    units.push(...read.units);
    return read.formula;
  };

  function sum(): Formula {
    let left = product();
    for (let here = taken(["+", "−", "-"]); here !== undefined; here = taken(["+", "−", "-"])) left = { kind: "sum", operator: here === "+" ? "+" : "-", left, right: product() };
    return left;
  }
  function product(): Formula {
    let left = signed();
    while (taken(["×"]) !== undefined) left = { kind: "product", operator: "*", left, right: signed() };
    return left;
  }
  function signed(): Formula {
    return taken(["−", "-"]) === undefined ? single() : { kind: "negate", of: signed() };
  }
  function bracketed(open: string, close: string): readonly Formula[] {
    if (taken([open]) === undefined) fail(`${open} is missing`);
    const list = [sum()];
    while (taken([","]) !== undefined) list.push(sum());
    if (taken([close]) === undefined) fail(`${close} is missing`);
    return list;
  }
  /** Takes the unit behind a number: words, and in LaTeX digits raised after them. */
  function unit(): string {
    let text = "";
    for (let here = parts[next]; here !== undefined; here = parts[next]) {
      if (here.localName === "mtext") text += (here.textContent ?? "").replaceAll("\u00a0", " ");
      else if (here.localName === "msup" && within(here)[0]?.localName === "mtext") text += within(here).map((one) => one.textContent ?? "").join("");
      else break;
      next += 1;
    }
    return plainUnit(text.trim());
  }
  function single(): Formula {
    const here = parts[next] ?? fail("something is missing");
    const name = here.localName ?? "";
    if (name === "mn") {
      next += 1;
      units.push(unit());
      return { kind: "number", digits: textOf(here) };
    }
    if (name === "mo") {
      if (sign() === "⌈") return { kind: "call", function: "ceil", of: bracketed("⌈", "⌉") };
      if (sign() === "⌊") return { kind: "call", function: "floor", of: bracketed("⌊", "⌋") };
      const [only, ...others] = bracketed("(", ")");
      return only === undefined || others.length > 0 ? fail("a list stands alone") : only;
    }
    if (name === "mfrac") {
      next += 1;
      const [above, below] = within(here);
      if (above === undefined || below === undefined) return fail("half a fraction");
      const left = inner(above);
      return { kind: "product", operator: "/", left, right: inner(below) };
    }
    if (name === "msqrt") {
      next += 1;
      const read = readParts(within(here).flatMap(seen), names);
      units.push(...read.units);
      return { kind: "call", function: "sqrt", of: [read.formula] };
    }
    const text = symbolText(here).replace("log_10", "log10");
    const called = printedFunctions[text];
    if (called !== undefined && parts[next + 1]?.localName === "mo" && textOf(parts[next + 1] as Element) === "(") {
      next += 1;
      return { kind: "call", function: called, of: bracketed("(", ")") };
    }
    if (text === "π") {
      next += 1;
      return { kind: "pi" };
    }
    // Letters side by side are one word, since a product always has its sign.
    if (name === "mi") {
      const run = parts.slice(next).findIndex((one) => one.localName !== "mi");
      const letters = parts.slice(next, run < 0 ? undefined : next + run);
      const word = names.get(letters.map(textOf).join(""));
      if (word !== undefined) {
        next += letters.length;
        return { kind: "name", name: word };
      }
    }
    const known = names.get(text);
    if (known !== undefined) {
      next += 1;
      return { kind: "name", name: known };
    }
    if (name === "msup" || name === "msubsup") return power(here, name);
    return fail(`"${text}" is no name here`);
  }
  /** A power: what is raised is one thing, or stands in brackets. */
  function power(here: Element, name: string): Formula {
    const all = within(here);
    const exponent = seen(all[all.length - 1] as Element).map(textOf).join("").replace("−", "-").replace("/", " / ");
    next += 1;
    if (name === "msubsup") {
      const text = `${textOf(all[0] as Element)}_${textOf(all[1] as Element)}`;
      return { kind: "power", base: { kind: "name", name: names.get(text) ?? fail(`"${text}" is no name here`) }, exponent };
    }
    const base = seen(all[0] as Element);
    const first = base[0];
    if (base.length > 1 && !["(", "⌈", "⌊"].includes(first === undefined ? "" : textOf(first))) fail("a row without brackets is raised");
    return { kind: "power", base: inner(all[0] as Element), exponent };
  }

  const formula = sum();
  if (next < parts.length) fail("too much");
  return { formula, units };
}
