import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { lifeAtTemperature } from "../timing/life-at-temperature.js";
import { say } from "./refusals.js";

/** How the life of a batch was told: at the temperature it is used at, or at that of its data sheet with a rule. */
export interface LifeTold {
  readonly given: Quantity<"time"> | undefined;
  readonly lifeAtReference: Quantity<"time"> | undefined;
  readonly reference: Quantity<"temperature"> | undefined;
  readonly temperature: Quantity<"temperature"> | undefined;
  readonly rule: "doubling" | "Arrhenius" | undefined;
  readonly activation: Quantity<"temperatureDifference"> | undefined;
}

/** The life of a batch at the temperature it is used at. */
export function batchLife({ given, lifeAtReference, reference, temperature, rule, activation }: LifeTold, work: Work): Quantity<"time"> {
  if (given !== undefined) {
    const besides = Object.entries({ reference, temperature, rule, activation }).filter(([, one]) => one !== undefined);
    refuseAll(besides.map(([name, one]) => refusal([name], String(one), say("besidesLife"))), work);
    return given;
  }
  const lacking = Object.entries({ reference, temperature, rule }).filter(([, one]) => one === undefined);
  refuseAll(lacking.map(([name]) => refusal([name], "", say("lifeAtReferenceNeeds"), "missing")), work);
  if (lifeAtReference === undefined || reference === undefined || temperature === undefined || rule === undefined) throw new Error("a life has been told");
  return work.part(lifeAtTemperature, { lifeAtReference, reference, temperature, rule, ...(activation === undefined ? {} : { activation }) }).answers.life;
}
