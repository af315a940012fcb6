import type { Conversion, Figure } from "../core/working.js";
import { type Box, figureBox, formulaBox, nameBox, row } from "./boxes.js";
import type { Steps, WorkedStep } from "./section.js";
import { conversionSign, sign } from "./typed.js";

/** A line of a worked step: lines of one step are lined up at their first sign. */
export interface TypesetLine {
  readonly left: Box;
  readonly sign: "=" | "≈";
  readonly right: Box;
}

/** A step in one system of units, as typeset lines. */
export interface TypesetWay {
  readonly title: string;
  readonly lines: readonly TypesetLine[];
}

const nothing = row();
const blank: Box = { kind: "blank", text: "_".repeat(32) };

/** A step as typeset lines: its formula, the conversions, the numbers, the result; for each system of units that is shown. */
export function typesetWays(step: WorkedStep, { named, blank: isBlank }: Steps): readonly TypesetWay[] {
  const left = nameBox(named(step.name));
  return step.ways.map(({ title, working }): TypesetWay => {
    const { conversions, operands, result, shown } = working;
    if (isBlank) {
      const unit = (shown?.to ?? result).unit;
      const last = unit === "" ? blank : row(blank, { kind: "unit", text: unit });
      return { title, lines: [{ left, sign: "=", right: blank }, { left: nothing, sign: "=", right: blank }, { left: nothing, sign: "=", right: last }] };
    }
    const numbers = formulaBox(step.formula, (name) => withoutRadians(operands.get(name)) ?? name);
    return {
      title,
      lines: [
        ...conversions.map((one): TypesetLine => ({ left: nameBox(named(one.name ?? "")), sign: "=", right: conversionBox(one) })),
        { left, sign: "=", right: formulaBox(step.formula, named) },
        ...(step.formula.kind === "name" ? [] : [{ left: nothing, sign: "=", right: numbers } as const]),
        { left: nothing, sign: sign(result), right: figureBox(result) },
        ...(shown === undefined ? [] : [{ left: nothing, sign: "=", right: conversionBox(shown) } as const]),
      ],
    };
  });
}

/** Radians are bare numbers where they stand in a formula. */
function withoutRadians(figure: Figure | undefined): Figure | undefined {
  return figure?.unit === "rad" ? { ...figure, unit: "" } : figure;
}

/** `0.75 in / 12 in/ft = 0.0625 ft` with a fraction bar. */
function conversionBox(conversion: Conversion): Box {
  const [from, factor, to] = [conversion.from, conversion.factor, conversion.to].map(figureBox) as [Box, Box, Box];
  const worked: Box = conversion.operator === "/" ? { kind: "fraction", above: from, below: factor } : row(from, { kind: "sign", sign: "*" }, factor);
  return row(worked, { kind: "sign", sign: conversionSign(conversion) }, to);
}
