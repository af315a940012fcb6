import { describe, expect, it } from "vitest";
import { recoatWindow } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { type Vector, vectors } from "../support/vectors.js";
import { readingsFrom } from "./records.js";

/** A published row: "71-80 degF (22-27 degC)" and "6-48 h". */
function rowOf({ inputs, expected }: Vector): { readonly from: number; readonly upTo: number; readonly soonest: number; readonly latest: number } {
  const [from = 0, upTo = 0] = (/^(\d+)-(\d+) degF/.exec(inputs.T ?? "") ?? []).slice(1).map(Number);
  const [soonest = 0, latest = 0] = (/^(\d+)-(\d+) h/.exec(expected.window ?? "") ?? []).slice(1).map(Number);
  return { from, upTo, soonest, latest };
}

const tableOf = (rows: readonly Vector[]): { readonly from: string; readonly rows: readonly { readonly upTo: string; readonly soonest: string; readonly latest: string }[] } => {
  const read = rows.map(rowOf);
  return { from: `${read[0]?.from ?? ""} degF`, rows: read.map(({ upTo, soonest, latest }) => ({ upTo: `${upTo} degF`, soonest: `${soonest} h`, latest: `${latest} h` })) };
};

const urethane = tableOf(vectors("recoat-pu-"));
const coat = { firstPatch: "2026-06-01T08:00[America/Chicago]", lastPatch: "2026-06-01T08:30[America/Chicago]" } as const;
const hoursAfter = (from: string, clock: string): number => (Date.parse(clock.replace(/\[.*/, "")) - Date.parse(from)) / 3_600_000;

describe("the rows of UFGS-09971", () => {
  it.each(vectors("recoat-pu-").filter(({ id }) => id !== "recoat-pu-111-120").flatMap((row) => [rowOf(row).from, rowOf(row).upTo].map((degrees) => [row.id, degrees, row] as const)))("%s at %i degF", (_id, degrees, row) => {
    const { soonest, latest } = rowOf(row);
    const window = recoatWindow({ ...coat, ...urethane, hottestSurface: `${degrees} degF` });
    expect(hoursAfter("2026-06-01T08:30-05:00", window.earliest)).toBe(soonest);
    expect(hoursAfter("2026-06-01T08:00-05:00", window.latest)).toBe(latest);
  });

  it.each(vectors("recoat-tack-"))("of the tack coat: $id", (row) => {
    const { upTo, soonest, latest } = rowOf(row);
    // The row from 101 to 110 degF is not on file, so the table has no rows between 100 and 120 to take it from.
    const window = recoatWindow({ ...coat, ...tableOf(vectors("recoat-tack-")), hottestSurface: `${upTo} degF` });
    expect([hoursAfter("2026-06-01T08:30-05:00", window.earliest), hoursAfter("2026-06-01T08:00-05:00", window.latest)]).toEqual([soonest, latest]);
  });

  it("at 111 to 120 degF the window of 1 to 2 h is open for half an hour after a coat of half an hour, and shut after one of an hour and a half", () => {
    const hot = { ...urethane, hottestSurface: "115 degF" };
    expect(recoatWindow({ ...coat, ...hot })).toMatchObject({ earliest: "2026-06-01T09:30-05:00[America/Chicago]", latest: "2026-06-01T10:00-05:00[America/Chicago]" });
    expect(faults(recoatWindow.try({ ...coat, ...hot, lastPatch: "2026-06-01T09:00[America/Chicago]" }))).toEqual([]);
    expect(faults(recoatWindow.try({ ...coat, ...hot, lastPatch: "2026-06-01T09:01[America/Chicago]" }))).toEqual(["noAnswer "]);
  });

  it("between two rows the hotter one holds", () => {
    const upTo = (hottestSurface: string): string => recoatWindow({ ...coat, ...urethane, hottestSurface }).row.upTo.toString();
    expect([upTo("80 degF"), upTo("80.1 degF"), upTo("81 degF")]).toEqual(["80 degF", "90 degF", "90 degF"]);
  });

  it("outside the table there is no answer", () => {
    expect(faults(recoatWindow.try({ ...coat, ...urethane, hottestSurface: "70.9 degF" }))).toEqual(["noAnswer rows"]);
    expect(faults(recoatWindow.try({ ...coat, ...urethane, hottestSurface: "120.1 degF" }))).toEqual(["noAnswer rows"]);
  });
});

describe("the hottest hour of a record", () => {
  const surface = (temperatures: readonly string[], hours = 1, readingIs = "momentary"): object => ({ zone: "America/Chicago", every: `${60 * hours} min`, readingIs, readings: readingsFrom("2026-06-01T13:00Z", temperatures, hours) });
  const hottest = (record: object): string => recoatWindow({ ...coat, ...urethane, surface: record as never }).hottestSurface.toString();

  it("hourly readings count as they stand", () => {
    expect(hottest(surface(["75 degF", "93 degF", "80 degF"]))).toBe("93 degF");
    expect(hottest(surface(["75 degF", "93 degF", "80 degF"], 1, "mean until the next"))).toBe("93 degF");
  });

  it("closer readings count where they last an hour", () => {
    // every half hour: 95 stands alone; 88, 89, 90 last an hour at 88 or more
    expect(hottest(surface(["75 degF", "95 degF", "75 degF", "88 degF", "89 degF", "90 degF"], 0.5))).toBe("88 degF");
    expect(hottest(surface(["75 degF", "95 degF", "91 degF", "75 degF"], 0.5, "mean until the next"))).toBe("91 degF");
  });

  it("what came before the coat does not count", () => {
    const before = { zone: "America/Chicago", every: "1 h", readingIs: "momentary", readings: readingsFrom("2026-06-01T12:00Z", ["110 degF", "80 degF", "82 degF"]) };
    expect(hottest(before)).toBe("82 degF");
  });

  it("a record that begins after the first patch is refused: its hottest hour may be missing", () => {
    // the first patch was laid at 13:00 UTC
    const late = { zone: "America/Chicago", every: "1 h", readingIs: "momentary", readings: readingsFrom("2026-06-01T13:01Z", ["80 degF", "82 degF", "81 degF"]) };
    expect(faults(recoatWindow.try({ ...coat, ...urethane, surface: late }))).toEqual(["refused surface"]);
  });

  it("is asked for once, and must reach an hour", () => {
    expect(faults(recoatWindow.try({ ...coat, ...urethane }))).toEqual(["either hottest"]);
    expect(faults(recoatWindow.try({ ...coat, ...urethane, hottestSurface: "80 degF", surface: surface(["75 degF", "75 degF"]) }))).toEqual(["either hottest"]);
    expect(faults(recoatWindow.try({ ...coat, ...urethane, surface: surface(["75 degF", "75 degF"], 0.25) }))).toEqual(["noAnswer surface"]);
  });
});

it("refuses a table that does not rise, an empty one, a row shut before it opens, and a last patch before the first", () => {
  const bad = { ...coat, hottestSurface: "75 degF", from: "71 degF" };
  expect(faults(recoatWindow.try({ ...bad, rows: [] }))).toEqual(["refused rows"]);
  expect(faults(recoatWindow.try({ ...bad, rows: [{ upTo: "90 degF", soonest: "4 h", latest: "36 h" }, { upTo: "80 degF", soonest: "6 h", latest: "5 h" }] }))).toEqual(["refused rows.1.upTo", "tooLow rows.1.latest"]);
  expect(faults(recoatWindow.try({ ...bad, rows: [{ upTo: "90 degF", soonest: "4 h", latest: "36 h" }], lastPatch: "2026-06-01T07:59[America/Chicago]" }))).toEqual(["refused lastPatch"]);
});

it("hotter never opens later nor shuts later", () => {
  const hours = Array.from({ length: 50 }, (_, step) => recoatWindow({ ...coat, ...urethane, hottestSurface: `${71 + step} degF` })).map(({ earliest, latest }) => [earliest, latest].map((clock) => hoursAfter("2026-06-01T08:00-05:00", clock)));
  expect(hours.every(([earliest = 0, latest = 0], index) => index === 0 || (earliest <= (hours[index - 1]?.[0] ?? 0) && latest <= (hours[index - 1]?.[1] ?? 0)))).toBe(true);
});
