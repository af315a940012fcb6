/** Draws whole numbers and members of lists; the same seed gives the same draws. */
export interface Draw {
  /** A whole number from `least` to `most`. */
  readonly whole: (least: number, most: number) => number;
  readonly one: <T>(list: readonly [T, ...T[]]) => T;
}

/** A draw from a number and a word, by the generator called mulberry32. */
export function drawFrom(seed: number, word: string): Draw {
  let state = Array.from(word).reduce((mixed, letter) => Math.imul(mixed ^ (letter.codePointAt(0) ?? 0), 16777619), seed ^ 2166136261) >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  return { whole, one: (list) => list[whole(0, list.length - 1)] ?? list[0] };
}
