import { describe, expect, it } from "vitest";
import { batchesInDay, dayPlan, labourTime, shiftShare, stretchLabour, usualStages } from "../../src/planning/index.js";
import { takeOff } from "../../src/takeoff/index.js";
import { usualHolds } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";
import { readingsFrom, steady } from "../timing/records.js";

// Monday, 1 June 2026, 07:00 in Chicago is 12:00 UTC.
const wall = (temperatures: readonly string[], start = "2026-06-01T12:00Z"): never => ({ zone: "America/Chicago", every: "1 h", readingIs: "mean until the next", readings: readingsFrom(start, temperatures) }) as never;
const air = (temperatures: readonly string[], start = "2026-06-01T12:00Z"): never => ({ ruleSet: "TMS 602-02", stopBelow: "40 degF", record: { zone: "America/Chicago", every: "1 h", readings: readingsFrom(start, temperatures) } }) as never;
const weekdays = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday"] as const;
const shifts = { from: "07:00", until: "15:30", breaks: "30 min", workdays: weekdays } as const;
const crew = { start: "2026-06-01T07:00", zone: "America/Chicago", shifts, crew: 4, availability: 1, rule: "doubling", activation: "5000 K", reference: "70 degF", holdsBy: "least" } as const;
/** A stage of so many hours of one person. */
const stage = (name: string, hours: number, more: object = {}): never => ({ name, inWeather: "goes on", rate: { of: "area", amount: "100 ft2", per: "100 ft2", hours: `${hours} h`, factor: 1 }, ...more }) as never;
const plan = (stages: readonly never[], more: object = {}): ReturnType<typeof dayPlan> => dayPlan({ ...crew, wall: wall(steady("70 degF", 400)), stages, ...more });
const at = (text: string): string => text.slice(0, 16);
const spans = (found: ReturnType<typeof dayPlan>): readonly string[] => found.stages.map(({ name, begins, ends }) => `${name} ${at(begins)} ${at(ends)}`);

describe("labour into shifts, by hand", () => {
  it("four persons do 32 h in a shift of 8.5 h with half an hour of breaks", () => {
    expect(spans(plan([stage("setting", 32)]))).toEqual(["setting 2026-06-01T07:00 2026-06-01T15:30"]);
    // 16 h are half of it: 4.25 h of the shift
    expect(spans(plan([stage("setting", 16)]))).toEqual(["setting 2026-06-01T07:00 2026-06-01T11:15"]);
  });

  it("goes on the next day, the next stage after it, and not on Saturday and Sunday", () => {
    const found = plan([stage("boards", 40), stage("tape", 8), stage("long", 110)]);
    // 40 h: Monday 32 and 8 on Tuesday, 2 h 7.5 min of the shift, to the whole minute; tape as long again from there.
    // The last: 254 min on Tuesday are 15.94 h, then 32 and 32, and 30.06 h take 7 h 59.1 min of Friday.
    expect(spans(found)).toEqual(["boards 2026-06-01T07:00 2026-06-02T09:08", "tape 2026-06-02T09:08 2026-06-02T11:16", "long 2026-06-02T11:16 2026-06-05T15:00"]);
    expect(spans(plan([stage("week", 161)]))).toEqual(["week 2026-06-01T07:00 2026-06-08T07:16"]);
    expect(spans(plan([stage("two days", 64)], { shifts: { ...shifts, closed: ["2026-06-02"] } }))).toEqual(["two days 2026-06-01T07:00 2026-06-03T15:30"]);
  });

  it("fewer persons and a crew that is not all there take longer: 1 of 4 at 80 % does 6.4 h a day", () => {
    const { stages, days } = plan([stage("setting", 12.8, { persons: 1 })], { availability: "80 %" });
    expect(stages[0]?.days.map(({ date, labour }) => `${date} ${labour.toString()}`)).toEqual(["2026-06-01 6.4 h", "2026-06-02 6.4 h"]);
    expect(days.map(({ date, labour, stages: names }) => [date, labour.toString(), ...names])).toEqual([["2026-06-01", "6.4 h", "setting"], ["2026-06-02", "6.4 h", "setting"]]);
  });

  it("begins where the plan begins, in the middle of a shift or before it", () => {
    expect(spans(plan([stage("setting", 1)], { start: "2026-06-01T12:00" }))[0]).toMatch(/^setting 2026-06-01T12:00 /);
    expect(spans(plan([stage("setting", 1)], { start: "2026-06-01T16:00" }))[0]).toMatch(/^setting 2026-06-02T07:00 /);
  });
});

describe("shifts over midnight", () => {
  const nights = { from: "22:00", until: "06:00", breaks: "0 h", workdays: [...weekdays, "Saturday", "Sunday"] } as const;

  it("belong to the day they begin on", () => {
    const found = plan([stage("night", 40)], { start: "2026-06-01T20:00", shifts: nights });
    expect(spans(found)).toEqual(["night 2026-06-01T22:00 2026-06-03T00:00"]);
    expect(found.days.map(({ date, labour }) => `${date} ${labour.toString()}`)).toEqual(["2026-06-01 32 h", "2026-06-02 8 h"]);
  });

  it("a plan that begins after midnight takes what is left of the shift of the day before", () => {
    expect(spans(plan([stage("night", 8)], { start: "2026-06-02T03:00", wall: wall(steady("70 degF", 100)), shifts: nights }))).toEqual(["night 2026-06-02T03:00 2026-06-02T05:00"]);
  });

  it("last as long as time passes where the clocks change: 9 h in the night to 1 November 2026, 7 h to 8 March", () => {
    const autumn = plan([stage("night", 36)], { start: "2026-10-31T22:00", wall: wall(steady("70 degF", 30), "2026-11-01T02:00Z"), shifts: nights });
    expect(autumn.stages[0]?.ends).toBe("2026-11-01T06:00-06:00[America/Chicago]");
    const spring = plan([stage("night", 28)], { start: "2026-03-07T22:00", wall: wall(steady("70 degF", 30), "2026-03-08T03:00Z"), shifts: nights });
    expect(spring.stages[0]?.ends).toBe("2026-03-08T06:00-05:00[America/Chicago]");
  });

  it("may not begin at an hour that the clocks leave out", () => {
    expect(faults(dayPlan.try({ ...crew, start: "2026-03-07T20:00", wall: wall(steady("70 degF", 30)), shifts: { ...nights, from: "02:30" }, stages: [stage("night", 1)] }))).toEqual(["refused shifts.from"]);
    // 8 March 2026 is a Sunday, and on a day without work no shift begins.
    expect(faults(dayPlan.try({ ...crew, start: "2026-03-07T20:00", wall: wall(steady("70 degF", 30)), shifts: { ...nights, from: "02:30", workdays: weekdays }, stages: [stage("night", 1)] }))).toEqual([]);
  });
});

describe("holds by the record of the wall", () => {
  const pointing = (more: object = {}): never => stage("pointing", 8, { hold: { work: "pointing", least: "24 h", ...more } });

  it("24 h at 70 degF are 24 h; at 52 degF they are 48 h", () => {
    expect(spans(plan([stage("setting", 16), pointing()]))[1]).toMatch(/^pointing 2026-06-02T11:15 /);
    const cold = plan([stage("setting", 16), pointing()], { wall: wall(steady("52 degF", 400)) });
    expect([spans(cold)[1]?.slice(0, 25), at(cold.stages[1]?.hold?.earliest ?? "")]).toEqual(["pointing 2026-06-03T11:15", "2026-06-03T11:15"]);
  });

  it("looks before the clock is believed, and may go by the usual wait", () => {
    const found = plan([stage("setting", 16), pointing({ typical: "48 h" })], { holdsBy: "typical" });
    expect(found.stages[1]).toMatchObject({ begins: "2026-06-03T11:15-05:00[America/Chicago]", hold: { after: "setting", test: "no unit moves under the thumb" } });
    expect([at(found.stages[1]?.hold?.earliest ?? ""), at(found.stages[1]?.hold?.typical ?? "")]).toEqual(["2026-06-02T11:15", "2026-06-03T11:15"]);
    expect(plan([stage("setting", 16), pointing()]).stages[1]?.hold).not.toHaveProperty("typical");
  });

  it("goes by the least wait where that is asked for, though a usual one is told, and by either rule", () => {
    expect(spans(plan([stage("setting", 16), pointing({ typical: "48 h" })]))[1]).toMatch(/^pointing 2026-06-02T11:15 /);
    // At the reference itself both rules give the wait as it is.
    expect(spans(plan([stage("setting", 16), pointing()], { rule: "Arrhenius" }))[1]).toMatch(/^pointing 2026-06-02T11:15 /);
  });

  it("waits for a stage that is named, while others go on", () => {
    const found = plan([stage("setting", 16), stage("elsewhere", 40), stage("ledger off", 4, { hold: { work: "ledger", after: "setting", least: "16 h" } })]);
    // 16 h after 11:15 on Monday is 03:15 on Tuesday; the crew is free at the end of its other work on Wednesday
    expect([at(found.stages[2]?.hold?.earliest ?? ""), found.stages[2]?.hold?.after, found.stages[2]?.begins === found.stages[1]?.ends]).toEqual(["2026-06-02T03:15", "setting", true]);
  });

  it("a window is counted from the beginning of the stage before, and a stage after it is told", () => {
    // the first coat begins on Friday at 07:00: its window of 48 h is shut on Sunday at 07:00
    const coats = (most: string): ReturnType<typeof dayPlan.solve> => dayPlan.solve({ ...crew, start: "2026-06-05T07:00", wall: wall(steady("70 degF", 200), "2026-06-05T12:00Z"), stages: [stage("first coat", 32), stage("second coat", 8, { hold: { work: "coat", least: "4 h", most } })] });
    const late = coats("48 h");
    expect(late.answers.stages[1]).toMatchObject({ begins: "2026-06-08T07:00-05:00[America/Chicago]", inWindow: false, hold: { latest: "2026-06-07T07:00-05:00[America/Chicago]" } });
    expect(late.cautions.some((text) => text.startsWith("second coat begins after its window is shut"))).toBe(true);
    // to the minute: from Friday 07:00 to Monday 07:00 are 72 h
    expect([coats("72 h"), coats("71.9 h")].map(({ answers }) => answers.stages[1]?.inWindow)).toEqual([true, false]);
  });

  it("a window whose end the record does not reach is open within it, and not known beyond it", () => {
    const tried = (hours: number): readonly string[] => faults(dayPlan.try({ ...crew, wall: wall(steady("70 degF", hours)), stages: [stage("first coat", 16), stage("elsewhere", 64), stage("second coat", 8, { hold: { work: "coat", after: "first coat", least: "4 h", most: "30 d" } })] }));
    // elsewhere ends on Wednesday at 11:15, 52.25 h after the beginning of the record
    expect([tried(53), tried(52)]).toEqual([[], ["noAnswer wall"]]);
  });

  it("is no answer where the record ends before", () => {
    expect(faults(dayPlan.try({ ...crew, wall: wall(steady("70 degF", 20)), stages: [stage("setting", 16), pointing()] }))).toEqual(["noAnswer wall"]);
    expect(faults(dayPlan.try({ ...crew, wall: wall(steady("70 degF", 20)), stages: [pointing()] }))).toEqual(["refused stages.0.hold.after"]);
  });
});

describe("weather and frost", () => {
  it("two hours in which the crew stops put the end off by two hours", () => {
    const hours = [...steady("60 degF", 3), ...steady("39 degF", 2), ...steady("60 degF", 100)];
    const setting = (inWeather: string): readonly string[] => spans(plan([stage("setting", 16, { inWeather })], { weather: air(hours) }));
    expect([setting("stops"), setting("goes on")]).toEqual([["setting 2026-06-01T07:00 2026-06-01T13:15"], ["setting 2026-06-01T07:00 2026-06-01T11:15"]]);
  });

  it("begins when the weather lets it, and takes the wind that goes with the heat", () => {
    const cold = [...steady("39 degF", 2), ...steady("60 degF", 100)];
    // Two hours of the shift are lost: 07:00 to 09:00.
    expect(spans(plan([stage("setting", 16, { inWeather: "stops" })], { weather: air(cold) }))).toEqual(["setting 2026-06-01T09:00 2026-06-01T13:15"]);
    const hot = readingsFrom("2026-06-01T12:00Z", steady("95 degF", 100));
    const tried = (wind: object): readonly string[] => faults(dayPlan.try({ ...crew, wall: wall(steady("70 degF", 100)), weather: { ruleSet: "TMS 602-02", stopBelow: "40 degF", record: { zone: "America/Chicago", every: "1 h", readings: hot.map((reading) => ({ ...reading, ...wind })) } }, stages: [stage("setting", 16, { inWeather: "stops" })] }));
    expect([tried({ wind: "5 mph" }), tried({})]).toEqual([[], ["missing weather.record.readings.0.wind"]]);
  });

  it("a day that is all stopped is left out; beyond the record nothing is planned", () => {
    expect(spans(plan([stage("setting", 8, { inWeather: "stops" })], { weather: air([...steady("30 degF", 24), ...steady("60 degF", 24)]) }))[0]).toMatch(/^setting 2026-06-02T07:00 /);
    const tried = (weather: object | undefined): readonly string[] => faults(dayPlan.try({ ...crew, wall: wall(steady("70 degF", 100)), weather, stages: [stage("setting", 40, { inWeather: "stops" })] }));
    // Nothing is known of the first two hours of the plan.
    expect(faults(dayPlan.try({ ...crew, wall: wall(steady("70 degF", 100)), weather: air(steady("60 degF", 48), "2026-06-01T14:00Z"), stages: [stage("setting", 16, { inWeather: "stops" })] }))).toEqual(["noAnswer weather.record"]);
    expect([tried(air(steady("60 degF", 24))), tried(air(steady("60 degF", 48))), tried(undefined)]).toEqual([["noAnswer weather.record"], [], ["missing weather"]]);
  });

  it("ends with the stretch that it just fills, not where the next one begins", () => {
    // Without breaks four persons do 16 h from 07:00 to 11:00, when the weather stops the work for two hours.
    const hours = [...steady("60 degF", 4), ...steady("39 degF", 2), ...steady("60 degF", 100)];
    expect(spans(plan([stage("setting", 16, { inWeather: "stops" })], { weather: air(hours), shifts: { ...shifts, breaks: "0 h" } }))).toEqual(["setting 2026-06-01T07:00 2026-06-01T11:00"]);
  });

  it("mixes no batch on a day that has no time before its frost", () => {
    // On Tuesday at 07:00 the wall is at 35 degF, colder than the life of a batch is told for, and it freezes at 23:00.
    const cold = wall([...steady("70 degF", 20), ...steady("35 degF", 20), ...steady("30 degF", 4), ...steady("70 degF", 200)]);
    const mix = { volume: "12 ft3", batch: "0.75 ft3", mixing: "3 min", slakeLow: "5 min", slakeHigh: "7 min", remixing: "2 min", life: "2 h" };
    const found = plan([stage("setting", 40, { frostCure: "16 h", batches: mix })], { wall: cold });
    expect(found.stages[0]?.days.map(({ date }) => date)).toEqual(["2026-06-01", "2026-06-03"]);
  });

  it("sets no unit that the frost would harm: 24 h at 70 degF before a frost on Tuesday at 12:00 is Monday at 12:00", () => {
    const frost = wall([...steady("70 degF", 29), ...steady("30 degF", 10), ...steady("70 degF", 200)]);
    const found = plan([stage("setting", 20, { frostCure: "24 h" })], { wall: frost });
    expect(found.stages[0]?.days.slice(0, 1).map(({ until, lastUnit }) => [at(until), at(lastUnit ?? "")])).toEqual([["2026-06-01T12:00", "2026-06-01T12:00"]]);
    // 5 h of 8.5 at 32 h a shift are 18.82 h; Tuesday has no time before its frost, so the rest is done on Wednesday
    expect(found.stages[0]?.days.map(({ date }) => date)).toEqual(["2026-06-01", "2026-06-03"]);
  });
});

describe("batches", () => {
  const mix = { volume: "12 ft3", batch: "0.75 ft3", mixing: "3 min", slakeLow: "5 min", slakeHigh: "7 min", remixing: "2 min", life: "2 h" } as const;

  it("as many a day as its share of the labour wants, each day rounded up", () => {
    // 40 h: the first unit is set 12 min after the first water, 8.3 h of 8.5 are left, 31.247 h of labour; 12 x 31.247 / 40 / 0.75 = 12.499
    const found = plan([stage("setting", 40, { batches: mix })]);
    expect(found.stages[0]?.days.map(({ from, batches }) => [at(from), String(batches)])).toEqual([["2026-06-01T07:12", "13"], ["2026-06-02T07:12", "4"]]);
    expect(found.days.map(({ batches }) => String(batches))).toEqual(["13", "4"]);
  });

  it("begins with the first water, and not on a day on which the shift is over before the first unit", () => {
    expect(spans(plan([stage("setting", 8, { batches: mix })]))[0]).toMatch(/^setting 2026-06-01T07:00 /);
    // From 15:25 the first unit would be set at 15:37.
    expect(plan([stage("setting", 8, { batches: mix })], { start: "2026-06-01T15:25" }).stages[0]?.days.map(({ from }) => at(from))).toEqual(["2026-06-02T07:12"]);
  });

  it("goes by either rule for its life: at the reference itself they agree", () => {
    const { stages } = plan([stage("setting", 8, { batches: mix })], { rule: "Arrhenius" });
    expect(at(stages[0]?.days[0]?.firstBatch?.clock?.discard ?? "")).toBe("2026-06-01T09:00");
  });

  it("the clock of the first batch, its life by the wall: 2 h at 70 degF are 1 h at 88 degF", () => {
    const discard = (temperature: string): string => at(plan([stage("setting", 8, { batches: mix })], { wall: wall(steady(temperature, 50)) }).stages[0]?.days[0]?.firstBatch?.clock?.discard ?? "");
    // 60 min by doubling come out a hair under: limits are rounded down to the minute
    expect([discard("70 degF"), ["2026-06-01T07:59", "2026-06-01T08:00"].includes(discard("88 degF"))]).toEqual(["2026-06-01T09:00", true]);
  });

  it("refuses a life shorter than the slaking, and a wall where the rule does not reach", () => {
    const tried = (life: string, temperature: string): readonly string[] => faults(dayPlan.try({ ...crew, wall: wall(steady(temperature, 50)), stages: [stage("setting", 8, { batches: { ...mix, life } })] }));
    expect([tried("11 min", "70 degF"), tried("2 h", "39 degF"), tried("2 h", "70 degF")]).toEqual([["tooLow stages.0.batches.usable"], ["tooLow stages.0.batches.warmth.temperature"], []]);
  });
});

it("takes the net of an order line of a take-off", () => {
  const { lines } = takeOff({
    measuredTo: "backing",
    elevations: [{ name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] }],
    layers: [{ kind: "studs", spacing: "16 in" }, { kind: "boards", name: "sheathing", acrossStuds: "4 ft", alongStuds: "8 ft", edgesBacked: false, screwSpacing: "8 in" }],
    packs: { "sheathing screws": { pieces: 1000 } }, allowances: { sheathing: { waste: "10 %" }, "sheathing screws": { waste: "5 %" } },
  });
  const boards = lines.find(({ item }) => item === "sheathing");
  // 320 ft2 by 32 ft2 are 10 boards, half an hour each
  const found = plan([{ name: "boards", inWeather: "goes on", rate: { of: "count", amount: boards?.net, per: 1, hours: "0.5 h", factor: 1 } } as never]);
  expect(found.stages[0]?.labour.toString()).toBe("5 h");
});

it("plans a wall from start to closeout: each stage after the one before it, and none before its hold is over", () => {
  const least = (waits: keyof typeof usualHolds): string => {
    const hold = usualHolds[waits];
    return "least" in hold ? hold.least : "4 h";
  };
  const stages = usualStages.map((row) => stage(row.stage, 12, { inWeather: row.inWeather, ...("waits" in row ? { hold: { work: row.waits, least: least(row.waits), ...("after" in row ? { after: row.after } : {}) } } : {}) }));
  const found = plan(stages, { weather: air(steady("60 degF", 400)) });
  expect(found.stages.map(({ name }) => name)).toEqual(usualStages.map((row) => row.stage));
  for (const [index, { begins, ends, hold }] of found.stages.entries()) {
    const before = found.stages[index - 1]?.ends;
    expect([at(begins) < at(ends), before === undefined || at(before) <= at(begins), hold === undefined || at(hold.earliest) <= at(begins)]).toEqual([true, true, true]);
  }
  // 24 h from the end of setting to pointing, 48 h from the end of pointing to washing
  const [setting, pointing, washing] = ["setting", "pointing and tooling", "washing"].map((name) => found.stages.find((one) => one.name === name));
  expect(Date.parse((pointing?.begins ?? "").slice(0, 22)) - Date.parse((setting?.ends ?? "").slice(0, 22))).toBeGreaterThanOrEqual(24 * 3_600_000);
  expect(Date.parse((washing?.begins ?? "").slice(0, 22)) - Date.parse((pointing?.ends ?? "").slice(0, 22))).toBeGreaterThanOrEqual(48 * 3_600_000);
});

it("refuses all that is wrong in one go", () => {
  const tried = (more: object): readonly string[] => faults(dayPlan.try({ ...crew, wall: wall(steady("70 degF", 50)), stages: [stage("a", 1)], ...more }));
  expect(tried({ stages: [stage("a", 1), stage("a", 1, { persons: 5 })] })).toEqual(["refused stages.1.name", "tooHigh stages.1.persons"]);
  expect(tried({ stages: [] })).toEqual(["refused stages"]);
  expect(tried({ start: "2026-13-01T07:00" })).toEqual(["refused start"]);
  // Of a long name the first 80 letters are told.
  const long = dayPlan.try({ ...crew, wall: wall(steady("70 degF", 50)), stages: [stage(`b${"x".repeat(99)}`, 1), stage(`b${"x".repeat(99)}`, 1)] });
  expect(long.ok ? "" : long.problems[0]?.message).toContain(`"b${"x".repeat(79)}"`);
  expect(tried({ shifts: { ...shifts, until: "07:00", workdays: [], closed: ["2026-02-30"] } })).toEqual(["refused shifts.closed.0", "refused shifts.until", "refused shifts.workdays"]);
  expect(tried({ shifts: { ...shifts, breaks: "8.5 h" } })).toEqual(["tooLow shifts.atTool"]);
  expect(tried({ crew: 0, holdsBy: "most", reference: "39 degF" })).toEqual(["tooLow crew", "tooLow reference", "notAChoice holdsBy"]);
  expect(tried({ stages: [stage("years", 100_000)] })).toEqual(["noAnswer stages.0"]);
}, 30_000);

describe("its calculations, by hand", () => {
  it("8.5 h less 0.5 are 94.1 %; 9 h of 4 at 75 % and 80 % are 21.6 h, and back", () => {
    expect(shiftShare({ shift: "8.5 h", breaks: "30 min" }).shiftShare.to("%").toFixed(1)).toBe("94.1");
    const pace = { persons: 4, availability: "75 %", shiftShare: "80 %" } as const;
    expect(stretchLabour({ lasts: "9 h", ...pace }).labour.toString()).toBe("21.6 h");
    expect(labourTime({ labour: "21.6 h", ...pace }).lasts.toString()).toBe("9 h");
  });

  it("a crew of four burns 32 h a day of 8 h, as in course notes", () => {
    const { inputs, expected } = vector("burn-rate");
    expect([inputs.crew, inputs.day]).toEqual(["1 carpenter + 3 labourers", "8 h"]);
    expectPrinted(stretchLabour({ lasts: "8 h", persons: 4, availability: 1, shiftShare: 1 }).labour.to("h"), expected.burn?.replace("h/day", "h"));
  });

  it("a third of 12 ft3 are 4, 5.33 batches of 0.75, so 6; exactly 3 are 4 and no more", () => {
    expect(batchesInDay({ volume: "12 ft3", labourToday: "21 h", labour: "63 h", batch: "0.75 ft3" }).batches.toString()).toBe("6");
    expect(batchesInDay({ volume: "12 ft3", labourToday: "15.75 h", labour: "63 h", batch: "0.75 ft3" }).batches.toString()).toBe("4");
  });
});
