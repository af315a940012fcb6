// Shifts and batches at their edge.
import { describe, expect, it } from "vitest";
import { batchRecord } from "../../src/planning/batch-record.js";
import { bedFromUsage } from "../../src/planning/bed-from-usage.js";
import { crewDays } from "../../src/planning/crew-days.js";
import { dayPlan } from "../../src/planning/day-plan.js";
import { placeArea } from "../../src/planning/place-area.js";
import { usedAgainstPlan } from "../../src/planning/used-against-plan.js";
import { volumeLabour } from "../../src/planning/volume-labour.js";
import { wasteFromUsage } from "../../src/planning/waste-from-usage.js";
import { waterFromUsage } from "../../src/planning/water-from-usage.js";
import { faults } from "../support/faults.js";

const readings = Array.from({ length: 12 }, (_, day) => ({ at: `2026-06-${String(day + 1).padStart(2, "0")}T07:00`, temperature: "70 degF" }));
const job = (shifts: object): object => ({
  start: "2026-06-01T22:00", zone: "America/Chicago", crew: 1, availability: 1, rule: "doubling", activation: "5000 K", reference: "70 degF", holdsBy: "least",
  shifts: { from: "22:00", until: "06:00", breaks: "0.8 h", workdays: ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"], ...shifts },
  wall: { zone: "America/Chicago", every: "24 h", readingIs: "mean until the next", readings },
  stages: [{ name: "setting", inWeather: "goes on", rate: { of: "area", amount: "100 ft2", per: "100 ft2", hours: "3.6 h", factor: 1 } }],
});

describe("dayPlan", () => {
  it("counts a shift over midnight by its own hours", () => {
    // 22:00 to 06:00 are 8 h, 0.8 h of them breaks: nine tenths at the tool, so 3.6 h take 4.
    const plan = dayPlan.try(job({}));
    expect(plan.ok ? plan.solution.answers.ends : plan.problems).toBe("2026-06-02T02:00-05:00[America/Chicago]");
  });

  it("says which end of a shift is no time, and wants two of them and a day", () => {
    expect(faults(dayPlan.try(job({ from: "25:00" })))).toEqual(["refused shifts.from"]);
    expect(faults(dayPlan.try(job({ until: "soon" })))).toEqual(["refused shifts.until"]);
    expect(faults(dayPlan.try(job({ until: "22:00" })))).toEqual(["refused shifts.until"]);
    expect(faults(dayPlan.try(job({ workdays: [] })))).toEqual(["refused shifts.workdays"]);
  });
});

describe("batchRecord", () => {
  const batch = (name: string, water: string, place: object): object => ({
    batch: name, material: "setting mortar", lot: "7731", dryMass: "50 lb", water, firstWater: `2026-10-05T${name}:40`, wallTemperature: "51 degF",
    places: [{ elevation: "E3", left: "0 ft", right: "18 ft", ...place }],
  });
  const overlaps = (...batches: readonly object[]): readonly string[] => {
    const tried = batchRecord.try({ zone: "America/Chicago", batches });
    return tried.ok ? tried.solution.answers.overlaps.map((one) => `${one.elevation}: ${one.batches.join(" and ")}`) : tried.problems.map(({ message }) => message);
  };

  it("lets one batch end where the next begins, above it or beside it, and tells where two lie over each other", () => {
    const [low, high, over] = [{ bottom: "2 ft", top: "3 ft" }, { bottom: "3 ft", top: "4 ft" }, { bottom: "3.5 ft", top: "5 ft" }];
    expect(overlaps(batch("09", "5 qt", low), batch("10", "6 qt", high))).toEqual([]);
    expect(overlaps(batch("09", "5 qt", high), batch("10", "6 qt", low))).toEqual([]);
    expect(overlaps(batch("09", "5 qt", { ...low, right: "9 ft" }), batch("10", "6 qt", { ...low, left: "9 ft" }))).toEqual([]);
    expect(overlaps(batch("09", "5 qt", { ...low, left: "9 ft" }), batch("10", "6 qt", { ...low, right: "9 ft" }))).toEqual([]);
    expect(overlaps(batch("09", "5 qt", high), batch("10", "6 qt", over))).toEqual(["E3: 09 and 10"]);
  });

  it("warns of batches over each other and of batches without a reading, and of nothing else", () => {
    const told = (bottom: string, at: string): readonly boolean[] => {
      const readings = { zone: "America/Chicago", every: "1 h", readingIs: "momentary", readings: ["09", "10", "11", "12"].filter((hour) => hour >= at).map((hour) => ({ at: `2026-10-05T${hour}:00`, temperature: "50 degF" })) };
      const tried = batchRecord.try({ zone: "America/Chicago", readings, batches: [batch("09", "5 qt", { bottom: "2 ft", top: "3 ft" }), batch("10", "5 qt", { bottom, top: "4 ft" })] });
      const cautions = tried.ok ? tried.solution.cautions.join(" ") : "";
      return [cautions.includes("written down for the same place"), cautions.includes("No reading reaches batch 09")];
    };
    expect([told("3 ft", "09"), told("2.5 ft", "09"), told("3 ft", "10")]).toEqual([[false, false], [true, false], [false, true]]);
  });

  it("keeps a note, and tells the first 80 letters of a name that is taken", () => {
    const place = { bottom: "2 ft", top: "3 ft" };
    const noted = batchRecord.try({ zone: "America/Chicago", batches: [{ ...batch("09", "5 qt", place), note: "first of the day" }, batch("10", "5 qt", { bottom: "3 ft", top: "4 ft" })] });
    const rows = noted.ok ? noted.solution.answers.batches : [];
    expect(rows.map((row) => ("note" in row ? row.note : "none"))).toEqual(["first of the day", "none"]);
    const name = `b${"x".repeat(99)}`;
    const twice = batchRecord.try({ zone: "America/Chicago", batches: [{ ...batch("09", "5 qt", place), batch: name }, { ...batch("10", "5 qt", { bottom: "3 ft", top: "4 ft" }), batch: name }] });
    expect(twice.ok ? "" : twice.problems[0]?.message).toContain(`"b${"x".repeat(79)}"`);
  });

  it("tells the driest and the wettest batch, and whether all are even to 2 %", () => {
    const place = { bottom: "2 ft", top: "3 ft" };
    const record = batchRecord.try({ zone: "America/Chicago", batches: [batch("09", "5.5 qt", place), batch("10", "5 qt", { bottom: "3 ft", top: "4 ft" }), batch("11", "6 qt", { bottom: "4 ft", top: "5 ft" })] });
    const [water] = record.ok ? record.solution.answers.water : [];
    // 5 and 6 qt are 4.73176473 and 5.678117676 kg, over 22.6796185 kg.
    expect([water?.driest, water?.wettest].map((ratio) => ratio?.toNumber("ratio").toFixed(6))).toEqual(["0.208635", "0.250362"]);
    expect(water?.even).toBe(false);
  });
});

describe("lists", () => {
  it("have an end, which is told", () => {
    const rate = { of: "area", amount: "1 ft2", per: "1 ft2", hours: "1 h", factor: 1 };
    const day = { workday: "10 h", lunch: "1 h", travel: "0.5 h", breaks: "0.5 h", paid: "9 h" };
    const tried = [
      crewDays.try({ tasks: Array.from({ length: 1001 }, () => ({ name: "task", rate })), day, crew: 5, availability: "80 %" }),
      usedAgainstPlan.try({ items: Array.from({ length: 1001 }, () => ({ of: "waste", name: "units", bought: 66, leftOver: 3, netPacks: 60, waste: "5 %", tolerance: "2 %" })) }),
    ];
    expect(tried.map((one) => (one.ok ? "" : one.problems[0]?.message))).toEqual([expect.stringMatching(/1,?001 tasks.*1 to 1,?000/), expect.stringMatching(/1,?001 items.*1 to 1,?000/)]);
  });
});

describe("places and water", () => {
  it("what is lost is not on the wall, and what was all left over was not used", () => {
    // 40 bags of 0.5 ft3 less a tenth.
    expect(bedFromUsage({ bagsUsed: 40, bagYield: "0.5 ft3", lossShare: "10 %", area: "432 ft2", plannedBed: "1/2 in" }).onWall.toString()).toBe("18 ft3");
    // 12 ft3 in parts of 4 ft3, two hours each, half as long again.
    expect(volumeLabour({ volume: "12 ft3", perVolume: "4 ft3", hours: "2 h", factor: 1.5 }).labour.toString()).toBe("9 h");
    expect(wasteFromUsage({ bought: 66, leftOver: 66, netPacks: 60, waste: "5 %" }).actualWaste.toString()).toBe("-100 %");
  });

  it("a place has a width and a height", () => {
    const place = { left: "0 ft", right: "2 ft", bottom: "0 ft", top: "3 ft" };
    expect(placeArea.try(place).ok).toBe(true);
    expect(faults(placeArea.try({ ...place, top: "0 ft" }))).toEqual(["tooLow height"]);
    expect(faults(placeArea.try({ ...place, right: "0 ft" }))).toEqual(["tooLow width"]);
  });

  it("a bag may name one figure of water, and not a least above its most", () => {
    const used = { bagsUsed: 10, water: "50 qt", waterLow: "5 qt" };
    expect(waterFromUsage.try({ ...used, waterHigh: "5 qt" }).ok).toBe(true);
    expect(faults(waterFromUsage.try({ ...used, waterHigh: "4.9 qt" }))).toEqual(["tooLow range"]);
  });
});
