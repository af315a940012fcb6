import { ageHeight, agePlot, hoursText } from "./age-plot.js";
import { clockAxis, clockOf, clockScale, ticksOf, timeText } from "./clock-axis.js";
import { holdRow, holdRows, holdTimes } from "./hold-rows.js";
import { keysOf } from "./legend-keys.js";
import { counted, group, picture, type PictureOptions, underTitle } from "./picture.js";
import { lookAt } from "./results.js";
import { scaleFor } from "./scale.js";
import { line, words } from "./svg.js";
import { bandKeys, bandShapes, type BandStretch, steps, stopShapes, stretchesOf } from "./temperature-bands.js";
import { ageSpells, type BandSpell, bandSpells, type DegreeUnit, degreesOf, drawnRecord, type TemperatureRecord } from "./temperature-record.js";
import { valueAxis } from "./value-axis.js";

const id = "pictures.temperature-chart";
const [left, right, width, plotHeight] = [106, 806, 944, 220];

/**
 * Draws a record of temperatures as SVG: each hour hatched by the band of cold or heat it lies in, a heavy line where work
 * stops; below it the equivalent age beside the time that has passed, and the holds of the works that wait.
 *
 * @param record - the weather, and where they are wanted the age and the holds
 * @param options - a title
 * @returns the text of an SVG document, with a title and a description for those who do not see it
 * @example
 * ```ts
 * const weather = masonryWeather({
 *   ruleSet: "TMS 602-02", stopBelow: "25 degF",
 *   record: { zone: "America/Chicago", every: "1 h", readings: [
 *     { at: "2026-11-02T14:00", temperature: "41 degF" }, { at: "2026-11-02T15:00", temperature: "39.9 degF" }, { at: "2026-11-02T16:00", temperature: "24 degF" },
 *   ] },
 * });
 * temperatureChart({ weather }).includes("Work stops first at 2026-11-02 16:00"); // true
 * ```
 */
export function temperatureChart(record: TemperatureRecord, options: PictureOptions = {}): string {
  lookAt(id, record, drawnRecord);
  const { title = "Temperatures and what they mean for the work" } = options;
  const { weather, age, holds } = record;
  const unit = degreesOf(weather);
  const spells = bandSpells(id, weather, unit);
  const aged = age === undefined ? [] : ageSpells(age, unit);
  const windows = holds?.windows ?? [];
  const clocks = windows.flatMap(({ done, earliest, typical, latest }) => [done, earliest, typical, latest].flatMap((text) => (text === undefined ? [] : [clockOf(text).at])));
  const times = [...spells, ...aged].flatMap(({ from, until }) => [from.at, until]).concat(clocks);
  const scale = clockScale(times.reduce((a, b) => Math.min(a, b)), times.reduce((a, b) => Math.max(a, b)), left, right);
  const all = [...spells, ...aged].map((one) => one.degrees);
  const [top, foot] = [underTitle + 4, underTitle + 4 + plotHeight];
  const degrees = scaleFor(all.reduce((a, b) => Math.min(a, b)) - 2, all.reduce((a, b) => Math.max(a, b)) + 1, [foot, top], 8);
  const stretches = stretchesOf(spells);
  const bands = bandKeys(spells);
  const ageTop = foot + 64;
  const holdTop = (age === undefined ? foot + 30 : ageTop + ageHeight) + 34;
  const lowest = windows.length > 0 ? holdTop + windows.length * holdRow : age === undefined ? foot + 44 : ageTop + ageHeight + 10;
  const keys = keysOf(bands, { left: 16, top: lowest + 16, width: width - 32 });
  return picture(
    { title, says: described(record, spells, stretches, unit), width, bottom: keys.bottom + 10, legend: legendOf(record, spells) },
    group("bands", bandShapes(stretches, bands, scale, degrees, foot)),
    group("degrees", valueAxis(degrees, { left, right, says: `temperature, ${unit}` })),
    group("freezing", freezing(unit, degrees.ticks, degrees.at)),
    group("record", [steps(spells, scale, degrees, { "stroke-width": 2.2 })]),
    group("aged record", aged.length === 0 ? [] : [steps(aged, scale, degrees, { "stroke-width": 1.4, "stroke-dasharray": "4 3" })]),
    group("stops", stopShapes(spells, scale, foot)),
    group("clock", clockAxis(ticksOf([...spells].map(({ from }) => from), scale), scale, foot)),
    age === undefined ? "" : agePlot(age, aged, scale, ageTop),
    group("holds", holdRows(windows, scale, holdTop)),
    group("keys", keys.parts),
  );
}

/** A dashed line where water freezes, where the chart reaches it. */
function freezing(unit: DegreeUnit, ticks: readonly number[], at: (degrees: number) => number): readonly string[] {
  const degrees = unit === "degF" ? 32 : 0;
  if (degrees < (ticks[0] ?? 0) || degrees > (ticks.at(-1) ?? 0)) return [];
  return [line([left, at(degrees)], [right + 8, at(degrees)], { "stroke-width": 1.2, "stroke-dasharray": "10 4" }), words(`freezing, ${String(degrees)} ${unit}`, [right + 11, at(degrees)], { size: 11, anchor: "start" })];
}

/** The chart in words. */
function described({ weather, age, holds }: TemperatureRecord, spells: readonly BandSpell[], stretches: readonly BandStretch[], unit: DegreeUnit): string {
  const [first, last] = [spells[0] as BandSpell, spells.at(-1) as BandSpell];
  const [coldest, hottest] = [spells.reduce((a, b) => (b.degrees < a.degrees ? b : a)), spells.reduce((a, b) => (b.degrees > a.degrees ? b : a))];
  const figure = ({ degrees, from }: BandSpell): string => `${String(Number(degrees.toPrecision(6)))} ${unit} at ${timeText(from)}`;
  const told = stretches.slice(0, 40).map(({ band, spells: [begin] }) => `${band} from ${begin === undefined ? "" : timeText(begin.from)}`);
  const more = stretches.length > 40 ? [`and ${counted(stretches.length - 40, "change")} more`] : [];
  const stop = weather.firstStop === undefined ? "Work does not stop in it." : `Work stops first at ${timeText(clockOf(weather.firstStop))}.`;
  return [
    `${counted(spells.length, "reading")} from ${timeText(first.from)} to ${timeText(last.from)}, judged by ${weather.ruleSet}. The lowest is ${figure(coldest)}, the highest ${figure(hottest)}.`,
    `Bands: ${[...told, ...more].join("; ")}.`,
    stop,
    ...(age === undefined ? [] : [`Equivalent age at ${age.reference.toString()} by the rule of ${age.rule}: ${hoursText(age.age)} when ${hoursText(age.elapsed)} have passed.`]),
    ...(holds?.windows ?? []).map((window) => `Hold before ${window.work}: ${holdTimes(window)}; look whether ${window.test}.`),
  ].join(" ");
}

function legendOf({ weather, age, holds }: TemperatureRecord, spells: readonly BandSpell[]): readonly string[] {
  return [
    `Stepped line: each reading until the next; the hatching below it is the band by ${weather.ruleSet}.`,
    ...(spells.some(({ stops }) => stops) ? ["Black along the foot: work stops."] : []),
    ...(age === undefined ? [] : [`Dashed steps: the temperatures that the age is counted from. Lower chart: the equivalent age at ${age.reference.toString()} by the rule of ${age.rule}, and dashed the time that has passed.`]),
    ...(holds === undefined ? [] : ["Hatched bar: the work waits. White bar: it may be done, once the test at the wall says so. Heavy mark: the usual wait."]),
  ];
}
