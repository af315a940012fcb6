import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { toothGauge } from "../data/film.js";
import { say } from "./refusals.js";

/** Where a wet film lies. */
export interface WetFilmBracket {
  readonly atLeast: Quantity<"length">;
  /** The film is less than this; absent where the bracket is open. */
  readonly below?: Quantity<"length">;
  readonly open: boolean;
  /** Judged at the lower end; absent where no least was given. */
  readonly leastReached?: "yes" | "no";
  /** Judged at the upper end; absent where no most was given. */
  readonly mostKept?: "yes" | "no" | "cannot be told";
}

/**
 * The bracket in which a wet film lies by a gauge with teeth: at least the last tooth that is wet, less than the first that
 * is dry. A least film is judged at the lower end, a most at the upper. Without a dry tooth the bracket is open above, and
 * whether a most is kept cannot be told.
 *
 * @example
 * ```ts
 * const bracket = wetFilmBracket({ lastWetTooth: "16 mil", firstDryTooth: "18 mil", least: "15 mil", most: "22 mil" });
 * bracket.leastReached; // "yes"
 * bracket.mostKept; // "yes"
 * wetFilmBracket({ lastWetTooth: "30 mil", most: "40 mil" }).mostKept; // "cannot be told"
 * ```
 */
export const wetFilmBracket = /* @__PURE__ */ composed({
  id: "film.wet-film-bracket",
  title: "Wet film by a gauge with teeth",
  cautions: ["Read at once, gauge square to the face; wipe the teeth, and mend the mark while the film is wet."],
  given: {
    lastWetTooth: { is: "length", unit: ["mil", "um"], symbol: "t_1", says: "highest tooth that is wet; nought where none is", atLeast: 0 },
    firstDryTooth: { is: "length", unit: ["mil", "um"], symbol: "t_2", says: "lowest tooth that is dry; left out where the highest is wet", above: 0, optional: true },
    least: { is: "length", unit: ["mil", "um"], symbol: "t_l", says: "least wet film allowed", above: 0, optional: true },
    most: { is: "length", unit: ["mil", "um"], symbol: "t_m", says: "most wet film allowed", above: 0, optional: true },
  },
  run: ({ lastWetTooth, firstDryTooth, least, most }, work): WetFilmBracket => {
    work.stand(toothGauge);
    if (firstDryTooth !== undefined && compare(firstDryTooth, lastWetTooth) <= 0) {
      work.problem({ code: "tooLow", path: ["firstDryTooth"], given: firstDryTooth.toString(), wanted: say("firstDryUnderLastWet", { lastWetTooth }) });
    }
    if (least !== undefined && most !== undefined && compare(least, most) > 0) {
      work.problem({ code: "tooLow", path: ["most"], given: most.toString(), wanted: say("mostUnderLeast", { least }) });
    }
    if (firstDryTooth === undefined) work.caution("The highest tooth was wet: the film may be any thickness above it; read it again with a longer tooth.");
    return {
      atLeast: lastWetTooth,
      ...(firstDryTooth === undefined ? {} : { below: firstDryTooth }),
      open: firstDryTooth === undefined,
      ...(least === undefined ? {} : { leastReached: compare(lastWetTooth, least) >= 0 ? "yes" : "no" }),
      ...(most === undefined ? {} : { mostKept: mostKept(lastWetTooth, firstDryTooth, most) }),
    };
  },
});

function mostKept(atLeast: Quantity<"length">, below: Quantity<"length"> | undefined, most: Quantity<"length">): "yes" | "no" | "cannot be told" {
  if (below !== undefined) return compare(below, most) <= 0 ? "yes" : "no";
  return compare(atLeast, most) > 0 ? "no" : "cannot be told";
}
