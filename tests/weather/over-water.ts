import type { Vector } from "../support/vectors.js";

/**
 * The humidity of a row over water, as the package takes it. PsychroLib counts humidity below freezing over ice: the vapour
 * is that share of the saturation pressure it prints, and over water it is a share of Magnus' 610.8 Pa exp(17.27 T / (237.3 + T)).
 */
export function overWater({ inputs, expected }: Vector): string {
  const [air, humidity, overIce] = [inputs.air, inputs.rh, expected.sat_vapour_pressure].map((text) => Number.parseFloat(text ?? ""));
  if (air === undefined || humidity === undefined || overIce === undefined || inputs.air?.endsWith("degC") !== true) throw new Error("no row in degC");
  if (air >= 0) return inputs.rh ?? "";
  return `${((humidity * overIce) / (610.8 * Math.exp((17.27 * air) / (237.3 + air)))).toFixed(6)} %`;
}
