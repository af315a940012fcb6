import type { Box, Fence, Sign } from "./boxes.js";
import { isClose, unitLetters } from "./unit-letters.js";

const signs: Readonly<Record<Sign, string>> = { "+": "+", "-": "−", "*": "×", "/": "/", "=": "=", "≈": "≈", ",": "," };
const fences: Readonly<Record<Fence, readonly [string, string]>> = { round: ["(", ")"], ceiling: ["⌈", "⌉"], floor: ["⌊", "⌋"] };

/** A typeset formula in MathML, as one element. */
export function boxMathml(box: Box): string {
  switch (box.kind) {
    case "row":
      return box.of.length === 1 && box.of[0] !== undefined ? boxMathml(box.of[0]) : element("mrow", box.of.map(boxMathml).join(""));
    case "number":
      return element("mn", markupText(box.text));
    case "word":
      // Not mtext: an operator between two of those loses the space round it, since they count as space themselves.
      return element("mi", markupText(box.text), box.text.length === 1 ? ' mathvariant="normal"' : "");
    case "unit":
      return element("mtext", markupText((isClose(box.text) ? "" : "\u00a0") + unitLetters(box.text)));
    case "blank":
      return element("mtext", box.text);
    case "sign":
      return element("mo", signs[box.sign]);
    case "pi":
      return element("mi", "π");
    case "symbol":
      return symbolMathml(box);
    case "fraction":
      return element("mfrac", boxMathml(box.above) + boxMathml(box.below));
    case "root":
      return element("msqrt", boxMathml(box.of));
    case "raised":
      return element("msup", boxMathml(box.base) + boxMathml(box.exponent));
    case "fence": {
      const [open, close] = fences[box.fence].map((letter) => element("mo", letter)) as [string, string];
      return element("mrow", open + boxMathml(box.of) + close);
    }
    case "function": {
      const name = element("mi", box.name);
      // The second is the sign, which nobody sees, that a function is applied to what follows.
      return (box.below === "" ? name : element("msub", name + element("mn", box.below))) + element("mo", "\u2061");
    }
  }
}

function symbolMathml({ letter, below, prime }: Extract<Box, { readonly kind: "symbol" }>): string {
  const base = element("mi", markupText(letter));
  const under = /^\d+$/.test(below) ? element("mn", below) : element("mi", markupText(below), ' mathvariant="normal"');
  const primed = element("mo", "′");
  if (below === "") return prime ? element("msup", base + primed) : base;
  return prime ? element("msubsup", base + under + primed) : element("msub", base + under);
}

function element(name: string, inside: string, attributes = ""): string {
  return `<${name}${attributes}>${inside}</${name}>`;
}

/** Text that HTML and XML print as it stands, within elements and within attributes; what XML has no letter for is left out. */
export function markupText(text: string): string {
  return text
    .replace(/[\u0000-\u001f\u007f-\u009f\ufffe\uffff\u2028\u2029]+/g, " ")
    .replace(/\p{Surrogate}/gu, " ")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;");
}
