/** What LaTeX takes for its own, or has no letter for, and how it is written instead. */
const written: Readonly<Record<string, string>> = {
  "\\": "\\textbackslash{}", "{": "\\{", "}": "\\}", $: "\\$", "&": "\\&", "#": "\\#", "%": "\\%", _: "\\_", "^": "\\textasciicircum{}", "~": "\\textasciitilde{}",
  "<": "\\textless{}", ">": "\\textgreater{}", "|": "\\textbar{}", "`": "\\textasciigrave{}", "°": "\\textdegree{}",
  "≈": "\\ensuremath{\\approx}", "≤": "\\ensuremath{\\le}", "≥": "\\ensuremath{\\ge}", "×": "\\ensuremath{\\times}", "−": "\\ensuremath{-}", "²": "\\ensuremath{^{2}}", "³": "\\ensuremath{^{3}}",
};

/** Text that LaTeX prints as it stands, in text and within `\sentence`; ligatures that would change it are kept apart. */
export function latexText(text: string): string {
  return text
    .replace(/[\u0000-\u001f\u007f\u2028\u2029]+/g, " ")
    .replace(/[\\{}$&#%_^~<>|`°≈≤≥×−²³]/g, (letter) => written[letter] ?? letter)
    .replace(/-(?=-)/g, "-{}")
    .replace(/'(?=')/g, "'{}")
    .replace(/([?!,])(?=\\textasciigrave|,)/g, "$1{}");
}
