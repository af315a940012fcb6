/** A straight scale: numbers onto places of the sheet, and the round numbers that are written at it. */
export interface Scale {
  readonly at: (number: number) => number;
  readonly ticks: readonly number[];
}

/** Round steps: 1, 2 or 5 times a power of ten. */
function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  const found = [1, 2, 5, 10].find((times) => times * power >= least * (1 - 1e-9)) ?? 10;
  return found * power;
}

/**
 * A scale from the round number at or below `low` to that at or above `high`, between two places of the sheet.
 *
 * @param most - how many steps at the most
 */
export function scaleFor(low: number, high: number, [start, end]: readonly [number, number], most: number): Scale {
  const step = roundStep((high - low || Math.abs(high) || 1) / most);
  const [first, last] = [Math.floor(low / step + 1e-9), Math.ceil(high / step - 1e-9)];
  const steps = Math.max(1, last - first);
  const places = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return {
    at: (number) => start + ((number / step - first) / steps) * (end - start),
    ticks: Array.from({ length: steps + 1 }, (_, index) => Number(((first + index) * step).toFixed(places))),
  };
}
