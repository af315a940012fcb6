import { hatched, type Hatch } from "./hatching.js";
import type { ClockScale } from "./clock-axis.js";
import type { Key } from "./legend-keys.js";
import type { Scale } from "./scale.js";
import { element, line } from "./svg.js";
import type { BandSpell, Spell } from "./temperature-record.js";

/** Hours of one band on end. */
export interface BandStretch {
  readonly band: string;
  readonly spells: readonly BandSpell[];
}

/** The hours put together while the band stays the same. */
export function stretchesOf(spells: readonly BandSpell[]): readonly BandStretch[] {
  const stretches: { band: string; spells: BandSpell[] }[] = [];
  for (const spell of spells) {
    const last = stretches.at(-1);
    if (last?.band === spell.band) last.spells.push(spell);
    else stretches.push({ band: spell.band, spells: [spell] });
  }
  return stretches;
}

const outOfBand = ["rising lines", "crossed lines", "dots", "falling lines", "dots and triangles", "level lines"] as const satisfies readonly Hatch[];

/** A hatching for each band that occurs, in the order in which they first do; the normal one stays white. */
export function bandKeys(spells: readonly BandSpell[]): readonly Key[] {
  const bands = [...new Set(spells.map(({ band }) => band))];
  const out = bands.filter((band) => band !== "normal");
  return bands.map((band) => ({ says: band, hatch: band === "normal" ? "empty" : (outOfBand[out.indexOf(band) % outOfBand.length] ?? "rising lines") }));
}

/** What lies under the temperature, hatched by the band of each hour. */
export function bandShapes(stretches: readonly BandStretch[], keys: readonly Key[], scale: ClockScale, degrees: Scale, foot: number): readonly string[] {
  return stretches.flatMap(({ band, spells }) => {
    const hatch = keys.find(({ says }) => says === band)?.hatch ?? "empty";
    return joined(spells).map(({ from, until, degrees: at }) => hatched({ left: scale.x(from.at), right: scale.x(until), top: degrees.at(at), bottom: foot }, hatch, { spacing: 7, outlined: false }));
  });
}

/** Hours of one temperature on end as one. */
function joined(spells: readonly BandSpell[]): readonly Spell[] {
  const all: Spell[] = [];
  for (const spell of spells) {
    const last = all.at(-1);
    if (last?.degrees === spell.degrees && last.until === spell.from.at) all[all.length - 1] = { ...last, until: spell.until };
    else all.push(spell);
  }
  return all;
}

/** A record as steps: each reading level until the next. */
export function steps(spells: readonly Spell[], scale: ClockScale, degrees: Scale, attributes: Readonly<Record<string, string | number>>): string {
  const points = spells.flatMap(({ from, until, degrees: at }) => [`${scale.x(from.at).toFixed(2)},${degrees.at(at).toFixed(2)}`, `${scale.x(until).toFixed(2)},${degrees.at(at).toFixed(2)}`]);
  return element("polyline", { points: points.join(" "), fill: "none", ...attributes });
}

/** A heavy line along the foot wherever work stops. */
export function stopShapes(spells: readonly BandSpell[], scale: ClockScale, y: number): readonly string[] {
  return spells.filter(({ stops }) => stops).map(({ from, until }) => line([scale.x(from.at), y], [scale.x(until), y], { "stroke-width": 6 }));
}
