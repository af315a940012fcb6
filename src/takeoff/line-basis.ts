import type { Basis } from "../core/basis.js";
import type { Solution } from "../core/solution.js";

/** What the last step of a solution stands on; of a composed one, the last step of its last part. */
export function basisOf(solution: Solution): Basis {
  const step = solution.steps.at(-1);
  if (step !== undefined) return step.basis;
  const part = solution.parts.at(-1);
  if (part === undefined) throw new Error(`${solution.id} has neither steps nor parts`);
  return basisOf(part);
}
