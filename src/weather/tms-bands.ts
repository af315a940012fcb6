import { type Basis, basisText } from "../core/basis.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { coldAsks, coldBands, hotAsks, hotBands, veryHotAsks } from "../data/weather.js";

/** One thing that a rule asks, and where it stands. */
export interface Asked {
  readonly says: string;
  readonly clause: string;
}

/** The band an hour lies in: `normal`, one of cold or one of heat, and how far out it is. */
export interface Band {
  readonly band: string;
  /** 0 in the normal band, then one more with each band of cold or heat. */
  readonly step: number;
  readonly side: "cold" | "normal" | "hot";
}

/** An hour of weather. */
export interface Hour {
  readonly temperature: Quantity<"temperature">;
  readonly wind?: Quantity<"speed"> | undefined;
}

/** Cold bands go from their lower end up to, not with, their upper end; heat is strictly above. */
export function tmsBand({ temperature, wind }: Hour): Band | "wind wanted" {
  const is = (limit: string): number => compare(temperature, quantity("temperature", limit as "1 degF"));
  const cold = coldBands.filter(({ below }) => is(below) < 0);
  const coldest = cold.at(-1);
  if (coldest !== undefined) return { band: coldest.band, step: cold.length, side: "cold" };
  for (const [index, { band, above, aboveInWind, wind: limit }] of [...hotBands.entries()].reverse()) {
    if (is(above) > 0) return { band, step: index + 1, side: "hot" };
    if (is(aboveInWind) <= 0) continue;
    if (wind === undefined) return "wind wanted";
    if (compare(wind, quantity("speed", limit)) > 0) return { band, step: index + 1, side: "hot" };
  }
  return { band: "normal", step: 0, side: "normal" };
}

/** What the rule asks in a band; a colder or hotter band asks what those before it ask as well. */
export function tmsAsks({ side, step }: Band): readonly Asked[] {
  const told = (rows: readonly { readonly asks: string; readonly basis: Basis }[]): readonly Asked[] => rows.map(({ asks, basis }) => ({ says: asks, clause: basisText(basis) }));
  if (side === "cold") return told([...coldBands.slice(0, step), ...coldAsks]);
  if (side === "hot") return told([...hotAsks, ...(step > 1 ? veryHotAsks : [])]);
  return [];
}
