import { type Amount, exactArithmetic as arithmetic } from "../core/amount.js";
import { amountOf, isQuantity, type Quantity } from "../core/quantity.js";
import type { Solution } from "../core/solution.js";
import type { Slip } from "./mistake.js";

const one = arithmetic.literal("1");
const nought = arithmetic.literal("0");

/** Nominal for actual sizes; waste and loss put in twice, the wrong way round, or not at all. */
export function changesOfValues(solution: Solution): readonly Slip[] {
  const quantities = solution.given.flatMap(({ name, says, value }) => (isQuantity(value) ? [{ name, says, value }] : []));
  const of = (name: string): Quantity | undefined => quantities.find((line) => line.name === name)?.value;
  const nominal = new Map<string, Amount>();
  for (const { name, says, value } of quantities) {
    const joint = of(/length|width/i.test(name) ? "headJoint" : "bedJoint");
    if (/\bactual\b/.test(says) && joint !== undefined) nominal.set(name, arithmetic.add(amountOf(value), amountOf(joint)));
  }
  const names = [...nominal.keys()].join(" and ");
  return [
    ...(nominal.size === 0 ? [] : [{ kind: "nominalSize", says: `${names} with a joint added: the nominal size, not the actual one`, change: { inputs: nominal } } as const]),
    ...quantities.flatMap(({ name, value }) => (name === "waste" ? wasteSlips(name, amountOf(value)) : name === "lossShare" ? lossSlips(name, amountOf(value)) : [])),
  ];
}

function slip(kind: Slip["kind"], says: string, name: string, amount: Amount): Slip {
  return { kind, says, change: { inputs: new Map([[name, amount]]) } };
}

/** Waste stands on top of the net. */
function wasteSlips(name: string, waste: Amount): readonly Slip[] {
  const grown = arithmetic.add(one, waste);
  return [
    slip("wasteTwice", "waste added a second time", name, arithmetic.subtract(arithmetic.multiply(grown, grown), one)),
    slip("wasteAsDivision", "divided by 1 less the waste, as for a share of what is bought", name, arithmetic.subtract(arithmetic.divide(one, arithmetic.subtract(one, waste)), one)),
    slip("wasteLeftOut", "waste left out", name, nought),
  ];
}

/** A loss is a share of what is bought. */
function lossSlips(name: string, loss: Amount): readonly Slip[] {
  const kept = arithmetic.subtract(one, loss);
  return [
    slip("lossTwice", "loss taken off a second time", name, arithmetic.subtract(one, arithmetic.multiply(kept, kept))),
    slip("lossAsWaste", "multiplied by 1 and the loss, as for waste on top of the net", name, arithmetic.subtract(one, arithmetic.divide(one, arithmetic.add(one, loss)))),
    slip("lossLeftOut", "loss left out", name, nought),
  ];
}
