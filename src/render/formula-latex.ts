import type { Box, Fence, Sign } from "./boxes.js";
import { latexText } from "./latex-text.js";
import { isClose, unitRuns } from "./unit-letters.js";

const signs: Readonly<Record<Sign, string>> = { "+": " + ", "-": " - ", "*": " \\times ", "/": "/", "=": " = ", "≈": " \\approx ", ",": ",\\, " };
const fences: Readonly<Record<Fence, readonly [string, string]>> = { round: ["\\left(", "\\right)"], ceiling: ["\\left\\lceil ", "\\right\\rceil "], floor: ["\\left\\lfloor ", "\\right\\rfloor "] };

const greek: Readonly<Record<string, string>> = {
  Γ: "Gamma", Δ: "Delta", Θ: "Theta", Λ: "Lambda", Ξ: "Xi", Π: "Pi", Σ: "Sigma", Φ: "Phi", Ψ: "Psi", Ω: "Omega", α: "alpha", β: "beta", γ: "gamma", δ: "delta", ε: "varepsilon",
  ζ: "zeta", η: "eta", θ: "theta", κ: "kappa", λ: "lambda", μ: "mu", ν: "nu", ξ: "xi", ρ: "rho", σ: "sigma", τ: "tau", φ: "varphi", χ: "chi", ψ: "psi", ω: "omega",
};

/** A typeset formula in LaTeX, for math mode with amsmath. */
export function boxLatex(box: Box): string {
  switch (box.kind) {
    case "row":
      return box.of.map(boxLatex).join("");
    case "number":
      return box.text;
    case "word":
      return `\\text{${latexText(box.text)}}`;
    case "unit":
      return unitLatex(box.text);
    case "blank":
      return "\\underline{\\hspace{6cm}}";
    case "sign":
      return signs[box.sign];
    case "pi":
      return "\\pi ";
    case "symbol": {
      const below = box.below === "" ? "" : `_{\\mathrm{${box.below}}}`;
      return `${letterLatex(box.letter)}${below}${box.prime ? "'" : ""}`;
    }
    case "fraction":
      return `\\frac{${boxLatex(box.above)}}{${boxLatex(box.below)}}`;
    case "root":
      return `\\sqrt{${boxLatex(box.of)}}`;
    case "raised":
      // A prime is raised itself, and cannot stand beside an exponent.
      return `${box.base.kind === "symbol" && box.base.prime ? `{${boxLatex(box.base)}}` : boxLatex(box.base)}^{${boxLatex(box.exponent)}}`;
    case "fence":
      return fences[box.fence].join(boxLatex(box.of));
    case "function": {
      const known = ["min", "max", "ln", "log", "exp", "sin", "arcsin"].includes(box.name);
      return `${known ? `\\${box.name}` : `\\operatorname{${box.name}}`}${box.below === "" ? "" : `_{${box.below}}`}`;
    }
  }
}

function letterLatex(letter: string): string {
  const known = greek[letter];
  if (known !== undefined) return `\\${known} `;
  return letter.length === 1 ? letter : `\\mathit{${letter}}`;
}

/** A unit after its number: upright letters, raised digits. */
function unitLatex(unit: string): string {
  const runs = unitRuns(unit).map(({ letters, raised }) => `\\text{${latexText(letters)}}${raised === "" ? "" : `^{${raised}}`}`);
  return `${isClose(unit) ? "" : "\\,"}${runs.join("")}`;
}
