import { exact } from "./amount.js";
import type { Fraction } from "./fraction.js";

/** A number of so many digits is a whole one without loss. */
const mostDigits = 15;

const isDigit = (code: number): boolean => code >= 48 && code <= 57;

/** Where the digits end that begin at a place. */
function digitsEnd(text: string, from: number): number {
  let at = from;
  while (isDigit(text.charCodeAt(at))) at += 1;
  return at;
}

/** The whole number that some digits are. */
function wholeBetween(text: string, from: number, to: number): number {
  let number = 0;
  for (let at = from; at < to; at += 1) number = number * 10 + text.charCodeAt(at) - 48;
  return number;
}

/**
 * Reads the numbers that are written most, `12`, `12.5`, `3/8`, `1-5/8`, `1 5/8`, at the start of a text, and tells where
 * the text goes on after a blank. What is written otherwise is left to the reader of all texts.
 */
export function plainNumber(text: string): { readonly number: Fraction; readonly end: number } | undefined {
  let end = digitsEnd(text, 0);
  if (end === 0) return undefined;
  let above = wholeBetween(text, 0, end);
  let below = 1;
  const sign = text.charAt(end);
  if (sign === ".") {
    const from = end + 1;
    end = digitsEnd(text, from);
    below = 10 ** (end - from);
    above = above * below + wholeBetween(text, from, end);
    if (end === from) return undefined;
  } else {
    // After a whole part come a hyphen or a blank, and the fraction.
    const mixed = sign === "-" || sign === " ";
    const slash = mixed ? digitsEnd(text, end + 1) : end;
    const last = digitsEnd(text, slash + 1);
    if (text.charAt(slash) === "/" && last > slash + 1 && (!mixed || slash > end + 1)) {
      below = wholeBetween(text, slash + 1, last);
      if (mixed) above = above * below + wholeBetween(text, end + 1, slash);
      if (below === 0) return undefined;
      end = last;
    }
  }
  if (end > mostDigits) return undefined;
  return { number: exact(BigInt(above), BigInt(below)), end: text.charAt(end) === " " ? end + 1 : end };
}
