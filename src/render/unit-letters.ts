/** A run of letters of a unit, and the digits raised after it. */
export interface UnitRun {
  readonly letters: string;
  readonly raised: string;
}

/** How the parts of units are printed where they are typeset. */
const letters: Readonly<Record<string, string>> = { degF: "°F", degC: "°C", deg: "°", um: "µm" };

/** A unit as it is typeset: `lb/ft3` as `lb/ft` with a raised 3, `degF h` as `°F h`. */
export function unitRuns(unit: string): readonly UnitRun[] {
  return [...unit.matchAll(/([^\d.-]+)(-?[\d.]*)/g)].map(([, text = "", raised = ""]) => ({
    letters: text.replace(/deg[FC]?|um/g, (word) => letters[word] ?? word),
    raised,
  }));
}

/** Whether a unit stands close behind its number, as the sign for degrees of an angle does. */
export function isClose(unit: string): boolean {
  return unit === "deg";
}

const raisedDigits: Readonly<Record<string, string>> = { "0": "⁰", "1": "¹", "2": "²", "3": "³", "4": "⁴", "5": "⁵", "6": "⁶", "7": "⁷", "8": "⁸", "9": "⁹", "-": "⁻", ".": "·" };

/** A unit in letters alone, with raised digits: `lb/ft³`. */
export function unitLetters(unit: string): string {
  return unitRuns(unit)
    .map(({ letters: text, raised }) => text + Array.from(raised, (digit) => raisedDigits[digit] ?? digit).join(""))
    .join("");
}
