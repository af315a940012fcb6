// The arguments of a step that is a min or a max are names or numbers, so that the one that governs can be told.
import { expect, it } from "vitest";
import { choicesOf, formulasFor } from "../../src/core/prepared.js";
import { allFound } from "../support/modules.js";

it("what competes in a step has a name", async () => {
  const steps = (await allFound()).flatMap(({ run }) => {
    const { definition } = run;
    if (definition === undefined) return [];
    return choicesOf(definition).flatMap((chosen) => formulasFor(definition, chosen).map(({ name, formula }) => ({ at: `${run.id} ${name}`, formula })));
  });
  const compared = steps.flatMap(({ at, formula }) => (formula.kind === "call" && formula.of.length > 1 ? [{ at, of: formula.of }] : []));
  expect(compared.length).toBeGreaterThan(5);
  expect(compared.filter(({ of }) => of.some(({ kind }) => kind !== "name" && kind !== "number")).map(({ at }) => at)).toEqual([]);
});
