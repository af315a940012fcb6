import { amountOf, makeQuantity, type Quantity } from "../core/quantity.js";
import type { Solution, Step } from "../core/solution.js";
import { type Decimal, toDecimal } from "../core/amount.js";
import { isSameAnswer } from "./same-answer.js";
import type { Mistake, MistakeKind } from "./mistake.js";
import { changesOfRounding } from "./mistakes-of-rounding.js";
import { changesOfUnits } from "./mistakes-of-units.js";
import { changesOfValues } from "./mistakes-of-values.js";
import { changesOfFunctions } from "./mistakes-of-functions.js";
import { workedWrong } from "./worked-wrong.js";

/** The usual mistakes that give another answer to what is asked, worked out with the same formulas. */
export function mistakesIn(solution: Solution, asked: Step, digits: number): readonly Mistake[] {
  const slips = [...changesOfUnits(solution), ...changesOfValues(solution), ...changesOfRounding(solution, asked.name), ...changesOfFunctions(solution)];
  const mistakes: { readonly kinds: MistakeKind[]; readonly says: string[]; readonly answer: Quantity }[] = [];
  const right = toDecimal(amountOf(asked.value));
  for (const { kind, says, change } of slips) {
    const amount = workedWrong(solution, asked.name, change);
    if (amount === undefined || !isBelievable(toDecimal(amount), right)) continue;
    const answer = makeQuantity(asked.value.dimension, amount, asked.value.unit);
    if (isSameAnswer({ value: asked.value, digits }, answer)) continue;
    const same = mistakes.find((one) => isSameAnswer({ value: one.answer, digits }, answer));
    if (same === undefined) mistakes.push({ kinds: [kind], says: [says], answer });
    else {
      if (!same.kinds.includes(kind)) same.kinds.push(kind);
      same.says.push(says);
    }
  }
  return mistakes.map((one) => Object.freeze({ kinds: Object.freeze(one.kinds), says: Object.freeze(one.says), answer: one.answer }));
}

/** An answer of the other sign, of nought, or thousands of times too large or small is seen to be wrong at once. */
function isBelievable(answer: Decimal, right: Decimal): boolean {
  if (right.isZero()) return true;
  const times = answer.div(right);
  return times.gt(1 / 2000) && times.lt(2000);
}
