import { describe, expect, it } from "vitest";
import { quantity } from "../../src/core/index.js";
import { problem } from "../../src/core/problems.js";
import { type Clock, clockAfter, clockBefore, clockOn, clockText, dayAfter, readClock, readDate, readTimeOfDay, timeBetween } from "../../src/timing/clock.js";

const place = { path: ["at"], says: "time" };
const clock = (text: string, zone?: string): Clock => {
  const read = readClock(text, { ...place, zone });
  if ("wanted" in read) throw new Error(problem(read).wanted);
  return read;
};
const wanted = (text: string, zone?: string): string => {
  const read = readClock(text, { ...place, zone });
  return "wanted" in read ? problem(read).wanted : clockText(read);
};

describe("a clock time", () => {
  it.each([
    ["2026-06-01T07:30[America/Chicago]", undefined, "2026-06-01T07:30-05:00[America/Chicago]"],
    ["2026-06-01 07:30", "America/Chicago", "2026-06-01T07:30-05:00[America/Chicago]"],
    ["2026-12-01T07:30:59", "America/Chicago", "2026-12-01T07:30-06:00[America/Chicago]"],
    ["2026-06-01T12:30Z", "America/Chicago", "2026-06-01T07:30-05:00[America/Chicago]"],
    ["2026-06-01T12:30Z", undefined, "2026-06-01T12:30+00:00[UTC]"],
    ["2026-06-01T07:30-05:00", undefined, "2026-06-01T07:30-05:00"],
    ["2026-06-01T07:30-05:00[America/Chicago]", undefined, "2026-06-01T07:30-05:00[America/Chicago]"],
    ["2026-02-28T23:59[Europe/Berlin]", "America/Chicago", "2026-02-28T23:59+01:00[Europe/Berlin]"],
  ])("%s in %s is %s", (text, zone, told) => {
    expect(wanted(text, zone)).toBe(told);
  });

  it.each([
    ["2026-06-01T07:30", undefined, /has no time zone/],
    ["07:30", "America/Chicago", /write the date, the time and the zone/],
    ["tomorrow", undefined, /write the date/],
    ["2026-02-30T07:30", "America/Chicago", /no such date or time/],
    ["2026-06-01T24:30", "America/Chicago", /no such date or time/],
    ["2026-06-01T07:30", "Chicago", /no time zone; write one such as/],
    ["2026-06-01T07:30[u-ca=hebrew]", undefined, /write the date/],
    ["2026-06-01T07:30-06:00[America/Chicago]", undefined, /America\/Chicago is never -06:00 from UTC at that time/],
  ])("%s in %s is refused", (text, zone, told) => {
    expect(wanted(text, zone)).toMatch(told);
  });

  it("that the clocks leave out, or show twice, is refused and not shifted", () => {
    // In 2026 the clocks of Chicago go from 02:00 to 03:00 on 8 March, and from 02:00 back to 01:00 on 1 November.
    expect(wanted("2026-03-08T02:30", "America/Chicago")).toMatch(/no such time or it comes twice/);
    expect(wanted("2026-11-01T01:30", "America/Chicago")).toMatch(/no such time or it comes twice/);
    expect(wanted("2026-11-01T01:30-05:00", "America/Chicago")).toBe("2026-11-01T01:30-05:00[America/Chicago]");
    expect(wanted("2026-11-01T01:30-06:00[America/Chicago]")).toBe("2026-11-01T01:30-06:00[America/Chicago]");
  });
});

describe("time that passes", () => {
  it("goes over midnight, the end of a month and a change of the clocks", () => {
    const after = (from: string, hours: `${number} h`): string => clockText(clockAfter(clock(from, "America/Chicago"), quantity("time", hours), "up"));
    expect(after("2026-02-28T23:30", "1 h")).toBe("2026-03-01T00:30-06:00[America/Chicago]");
    expect(after("2026-03-08T01:30", "1 h")).toBe("2026-03-08T03:30-05:00[America/Chicago]");
    expect(after("2026-11-01T00:30", "2 h")).toBe("2026-11-01T01:30-06:00[America/Chicago]");
    // 48 h from Saturday 08:00 is Monday 09:00, since an hour of the clock is left out between.
    expect(after("2026-03-07T08:00", "48 h")).toBe("2026-03-09T09:00-05:00[America/Chicago]");
  });

  it("is 23 and 25 hours from noon to noon where the clocks change", () => {
    const hours = (from: string, until: string): string => timeBetween(clock(from, "America/Chicago"), clock(until, "America/Chicago")).to("h").toString();
    expect([hours("2026-03-07T12:00", "2026-03-08T12:00"), hours("2026-10-31T12:00", "2026-11-01T12:00"), hours("2026-06-01T12:00", "2026-06-01T11:30")]).toEqual(["23", "25", "-0.5"]);
  });

  it("is rounded to the minute so that no wait is shorter and no limit later", () => {
    const from = clock("2026-06-01T08:00[UTC]");
    const third = quantity("time", "1/3 min");
    expect([clockAfter(from, third, "up"), clockAfter(from, third, "down"), clockBefore(from, third)].map(clockText)).toEqual([
      "2026-06-01T08:01+00:00[UTC]", "2026-06-01T08:00+00:00[UTC]", "2026-06-01T07:59+00:00[UTC]",
    ]);
    const whole = quantity("time", "7 min");
    expect([clockAfter(from, whole, "up"), clockAfter(from, whole, "down")].map(clockText)).toEqual(["2026-06-01T08:07+00:00[UTC]", "2026-06-01T08:07+00:00[UTC]"]);
  });
});

describe("a day and a time of day", () => {
  it("are read", () => {
    const day = readDate("2026-03-01", place);
    expect("wanted" in day ? day.wanted : dayAfter(day, quantity("time", "48.9 d")).toString()).toBe("2026-04-18");
    expect([readTimeOfDay("07:00", place), readTimeOfDay("23:59", place)]).toEqual([420, 1439]);
  });

  it.each(["2026-3-1", "2026-02-29", "today"])("%s is no date", (text) => {
    expect(readDate(text, place)).toMatchObject({ code: "refused", wanted: { words: "write a date such as 2026-06-01" } });
  });

  it.each(["7:00", "24:00", "07:60", "07.30"])("%s is no time of day", (text) => {
    expect(readTimeOfDay(text, place)).toMatchObject({ code: "refused", wanted: { words: "write a time of day such as 07:00" } });
  });
});

describe("a time of day on a day", () => {
  // In 2026 the clocks of Chicago go from 02:00 to 03:00 on 8 March, and from 02:00 back to 01:00 on 1 November.
  const on = (day: string, minutes: number, later = 0): string => {
    const found = clockOn(clock(`${day}T12:00`, "America/Chicago"), minutes, { path: ["shift"], says: "beginning" }, later);
    return "wanted" in found ? `${found.given}: ${problem(found).wanted}` : clockText(found);
  };

  it("has the distance from UTC of that day, and of a day after", () => {
    expect(on("2026-03-07", 150)).toBe("2026-03-07T02:30-06:00[America/Chicago]");
    expect(on("2026-03-07", 180, 1)).toBe("2026-03-08T03:00-05:00[America/Chicago]");
    expect(on("2026-12-31", 0, 1)).toBe("2027-01-01T00:00-06:00[America/Chicago]");
  });

  it("is refused where the clocks leave it out or show it twice", () => {
    expect(on("2026-03-07", 150, 1)).toMatch(/^2026-03-08T02:30: the clocks change in America\/Chicago/);
    expect(on("2026-11-01", 119)).toMatch(/^2026-11-01T01:59: the clocks change/);
    expect(on("2026-11-01", 120)).toBe("2026-11-01T02:00-06:00[America/Chicago]");
  });
});
