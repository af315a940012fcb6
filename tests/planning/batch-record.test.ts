import { describe, expect, it } from "vitest";
import { type BatchEntry, batchesAt, batchRecord, placeArea, waterRatio, waterSpread } from "../../src/planning/index.js";
import { faults } from "../support/faults.js";
import { readingsFrom } from "../timing/records.js";

// Invented for a wall of our own: three batches of setting mortar and one of joint mortar.
const entry = (batch: string, change: Partial<BatchEntry> = {}): BatchEntry => ({
  batch, material: "setting mortar", lot: "7731", dryMass: "50 lb", water: "5.3 qt", firstWater: "2026-10-05T09:40", usedUp: "2026-10-05T11:10", wallTemperature: "51 degF",
  places: [{ elevation: "E3", left: "0 ft", right: "18 ft", bottom: "2 ft", top: "3 ft" }], ...change,
});
const log = {
  zone: "America/Chicago",
  batches: [
    entry("14", { places: [{ elevation: "E3", left: "0 ft", right: "18 ft", bottom: "2 ft", top: "3 ft" }, { elevation: "E4", left: "0 ft", right: "18 ft", bottom: "2 ft", top: "3 ft" }] }),
    entry("15", { firstWater: "2026-10-05T11:20", usedUp: "2026-10-05T12:30", places: [{ elevation: "E3", left: "18 ft", right: "30 ft", bottom: "2 ft", top: "3 ft" }] }),
    entry("16", { lot: "7732", firstWater: "2026-10-05T13:00", usedUp: "2026-10-05T14:00", places: [{ elevation: "E3", left: "0 ft", right: "10 ft", bottom: "3 ft", top: "4 ft" }] }),
    entry("J1", { material: "joint mortar", lot: "A2", dryMass: "20 lb", water: "1.4 qt", firstWater: "2026-10-07T08:00", usedUp: "2026-10-07T09:00", places: [{ elevation: "E3", left: "0 ft", right: "30 ft", bottom: "2 ft", top: "3 ft" }] }),
  ],
};
const readings = { zone: "America/Chicago", every: "1 h", readingIs: "momentary", readings: readingsFrom("2026-10-05T14:00Z", ["49 degF", "52 degF", "55 degF", "54 degF", "56 degF"]) } as never;

describe("which unit came of which batch", () => {
  const at = (elevation: string, across: string, up: string, more: object = {}): readonly string[] => batchesAt({ ...log, ...more, unit: { elevation, across, up } }).batches.map(({ batch }) => batch);

  it("by its place: the setting and the joint mortar", () => {
    expect([at("E3", "7 ft", "2.5 ft"), at("E4", "7 ft", "2.5 ft"), at("E3", "20 ft", "30 in")]).toEqual([["14", "J1"], ["14"], ["15", "J1"]]);
  });

  it("with its lot, hour, water and readings: 09:40 to 11:10 has 09:00, 10:00 and 11:00", () => {
    const [row] = batchesAt({ ...log, batches: log.batches.slice(0, 1), readings, unit: { elevation: "E3", across: "7 ft", up: "2.5 ft" } }).batches;
    expect(row).toMatchObject({ batch: "14", lot: "7731", firstWater: "2026-10-05T09:40-05:00[America/Chicago]", usedUp: "2026-10-05T11:10-05:00[America/Chicago]" });
    expect([row?.water, row?.wallTemperature, row?.readings?.lowest, row?.readings?.highest].map(String)).toEqual(["5.3 qt", "51 degF", "49 degF", "55 degF"]);
    expect([row?.readings?.count, row?.readings?.from]).toEqual([3, "2026-10-05T09:00-05:00[America/Chicago]"]);
  });

  it("on the line where two meet it may be of either", () => {
    expect(at("E3", "18 ft", "2.5 ft")).toEqual(["14", "15", "J1"]);
    expect(at("E3", "5 ft", "3 ft")).toEqual(["14", "16", "J1"]);
  });

  it("no batch is no answer", () => {
    for (const unit of [{ elevation: "E3", across: "31 ft", up: "2.5 ft" }, { elevation: "E9", across: "1 ft", up: "2.5 ft" }]) expect(faults(batchesAt.try({ ...log, unit }))).toEqual(["noAnswer unit"]);
  });
});

describe("batchRecord", () => {
  it("lots with their batches and areas by hand: 18 + 18 + 12 and 10 ft2", () => {
    const { lots } = batchRecord(log);
    expect(lots.map(({ material, lot, batches, area, dryMass }) => [material, lot, batches.join(" "), String(area), String(dryMass)])).toEqual([
      ["setting mortar", "7731", "14 15", "48 ft2", "100 lb"], ["setting mortar", "7732", "16", "10 ft2", "50 lb"], ["joint mortar", "A2", "J1", "30 ft2", "20 lb"],
    ]);
  });

  it("water to dry mix: 5.3 qt on 50 lb", () => {
    // 5.3 qt = 1.325 gal x 8.3454 lb/gal = 11.0577 lb; / 50 = 0.2212
    expect(batchRecord(log).batches[0]?.waterRatio.to().toFixed(4)).toBe("0.2212");
    expect(waterRatio({ dryMass: "10 kg", water: "2 L" }).waterRatio.toString()).toBe("0.2");
  });

  it("equal water within 2 %: 5.3 and 5.4 qt are 1.89 % apart, 5.3 and 5.5 are 3.77 %", () => {
    const water = (last: string): ReturnType<typeof batchRecord.solve> => batchRecord.solve({ ...log, batches: [entry("1"), entry("2", { water: last, places: [] })] });
    expect(water("5.4 qt").answers.water.map(({ spread, even }) => [spread.to("%").toFixed(2), even])).toEqual([["1.89", true]]);
    expect(water("5.5 qt").answers.water.map(({ spread, even }) => [spread.to("%").toFixed(2), even])).toEqual([["3.77", false]]);
    expect([water("5.4 qt"), water("5.5 qt")].map(({ cautions }) => cautions.some((text) => text.includes("several shades")))).toEqual([false, true]);
    // exactly 2 % is still even
    expect(waterSpread({ driest: 0.2, wettest: 0.204 }).spread.toString()).toBe("2 %");
    expect(water("5.406 qt").answers.water[0]?.even).toBe(true);
    expect(faults(waterSpread.try({ driest: 0.2, wettest: 0.19 }))).toEqual(["tooLow spread"]);
  });

  it("batches of one material in one place are told, and those of another material are not", () => {
    const { answers, cautions } = batchRecord.solve({ ...log, batches: [entry("1"), entry("2", { places: [{ elevation: "E3", left: "17 ft", right: "20 ft", bottom: "2 ft", top: "3 ft" }] }), entry("3", { material: "joint mortar" })] });
    expect(answers.overlaps).toEqual([{ elevation: "E3", batches: ["1", "2"] }]);
    expect(cautions.some((text) => text.includes("may be of either"))).toBe(true);
    expect(batchRecord(log).overlaps).toEqual([]);
  });

  it("a batch that no reading reaches says so", () => {
    const { answers, cautions } = batchRecord.solve({ ...log, readings });
    expect(answers.batches.map((row) => row.readings?.count)).toEqual([3, 2, 1, undefined]);
    expect(cautions).toContain("No reading reaches batch J1.");
  });

  it("what is kept is plain: it goes through JSON and comes out the same", () => {
    const kept = JSON.parse(JSON.stringify(log)) as typeof log;
    expect(JSON.stringify(batchRecord(kept))).toBe(JSON.stringify(batchRecord(log)));
    expect(Object.values(log.batches[0] ?? {}).every((one) => typeof one === "string" || Array.isArray(one))).toBe(true);
  });

  it("refuses a batch of one name twice, one without a name, one used up before its water, edges inside out, and no water", () => {
    const tried = (...batches: readonly BatchEntry[]): readonly string[] => faults(batchRecord.try({ zone: "America/Chicago", batches }));
    expect(tried(entry("1"), entry("1"), entry(" "))).toEqual(["refused batches.1.batch", "refused batches.2.batch"]);
    expect(tried(entry("1", { usedUp: "2026-10-05T09:39" }))).toEqual(["refused batches.0.usedUp"]);
    expect(tried(entry("1", { places: [{ elevation: "E3", left: "18 ft", right: "0 ft", bottom: "2 ft", top: "2 ft" }] }))).toEqual(["tooLow batches.0.places.0.right", "tooLow batches.0.places.0.top"]);
    expect(tried(entry("1", { water: "0 qt", firstWater: "09:40" }))).toEqual(["tooLow batches.0.water"]);
    expect(tried(entry("1", { firstWater: "09:40" }))).toEqual(["refused batches.0.firstWater"]);
    expect(tried()).toEqual(["refused batches"]);
    expect(faults(batchRecord.try({ batches: [entry("1")] }))).toEqual(["refused batches.0.firstWater", "refused batches.0.usedUp"]);
  });
});

it("placeArea is width by height", () => {
  expect(placeArea({ left: "2 ft", right: "20 ft", bottom: "24 in", top: "4 ft" }).area.toString()).toBe("36 ft2");
});
