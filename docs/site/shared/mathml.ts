import type { Formula } from "../../../src/core/formula.js";
import { formulaBox, nameBox, row } from "../../../src/render/boxes.js";
import { boxMathml } from "../../../src/render/formula-mathml.js";
import { escaped, type Html, markup } from "./html.js";

/** A symbol such as `t_h`, set with its index. */
export function symbolHtml(symbol: string): Html {
  return markup(`<math alttext="${escaped(symbol)}">${boxMathml(nameBox({ symbol }))}</math>`);
}

/** An equation, typeset in symbols; the text is for those who cannot see it. */
export function equationHtml(symbol: string, formula: Formula, symbolOf: (name: string) => string, text: string): Html {
  const box = row(nameBox({ symbol }), { kind: "sign", sign: "=" }, formulaBox(formula, (name) => ({ symbol: symbolOf(name) })));
  return markup(`<math display="block" alttext="${escaped(text)}">${boxMathml(box)}</math>`);
}
