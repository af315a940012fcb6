import { describe, expect, it } from "vitest";
import { quantity } from "../../src/core/index.js";
import { ukFrost, ukHeat } from "../../src/data/weather.js";
import { masonryWeather } from "../../src/weather/index.js";
import { tmsBand } from "../../src/weather/tms-bands.js";
import { ukState } from "../../src/weather/uk-state.js";
import { faults } from "../support/faults.js";
import { type Vector, vector, vectors } from "../support/vectors.js";
import { readingsFrom, steady } from "../timing/records.js";

const record = (temperatures: readonly string[], wind?: string): never =>
  ({ zone: "America/Chicago", every: "1 h", readings: readingsFrom("2026-11-02T14:00Z", temperatures).map((reading) => (wind === undefined ? reading : { ...reading, wind })) }) as never;
const tms = (temperatures: readonly string[], wind?: string): ReturnType<typeof masonryWeather> => masonryWeather({ ruleSet: "TMS 602-02", stopBelow: "20 degF", record: record(temperatures, wind) });
const uk = (temperatures: readonly string[]): ReturnType<typeof masonryWeather> => masonryWeather({ ruleSet: "UK warranty standards 2023", record: record(temperatures) });
const saying = (asked: readonly { readonly says: string }[]): string => asked.map(({ says }) => says).join("; ");

describe("TMS 602: cold", () => {
  it("at, just under and just over each edge; a band holds its lower end", () => {
    const bands = ["40 degF", "39.99 degF", "32 degF", "31.99 degF", "25 degF", "24.99 degF", "20 degF", "19.99 degF"].map((temperature) => tms([temperature, temperature]).now.band);
    expect(bands).toEqual([
      "normal", "cold, 32 to 40 degF", "cold, 32 to 40 degF", "cold, 25 to 32 degF", "cold, 25 to 32 degF", "cold, 20 to 25 degF", "cold, 20 to 25 degF", "cold, under 20 degF",
    ]);
  });

  it("the edges in degrees Celsius, which are printed rounded, are those in degrees Fahrenheit", () => {
    expect(["-3.89 degC", "-3.88 degC", "0 degC", "-0.01 degC"].map((temperature) => tms([temperature, temperature]).now.band)).toEqual([
      "cold, 20 to 25 degF", "cold, 25 to 32 degF", "cold, 32 to 40 degF", "cold, 25 to 32 degF",
    ]);
  });

  it("asks what was read of it from 20 to 25 degF, and tells what is from memory", () => {
    const { expected } = vector("tms602-2002-construct-20-25");
    const { asks } = tms(["22 degF", "22 degF"]);
    const read = asks.find(({ says }) => says.startsWith("heat masonry under construction"));
    for (const word of ["heat masonry under construction to 40 degF", "wind breaks or enclosures", "15 mph"]) expect([expected.requirement?.includes(word), read?.says.includes(word)]).toEqual([true, true]);
    expect(read?.clause).toContain("TMS 602-02");
    expect(asks.filter(({ clause }) => clause.startsWith("from memory")).map(({ says }) => says)).toEqual([expect.stringContaining("heat sand or water"), expect.stringContaining("keep mortar above freezing")]);
  });

  it("stops nothing by a band that is from memory: only the temperature of the crew stops it", () => {
    const cold = masonryWeather({ ruleSet: "TMS 602-02", stopBelow: "-10 degF", record: record(["39 degF", "31 degF", "22 degF", "10 degF"]) });
    expect([cold.hours.map(({ stops }) => stops), cold.firstStop]).toEqual([[false, false, false, false], undefined]);
    const { cautions, bases } = masonryWeather.solve({ ruleSet: "TMS 602-02", stopBelow: "-10 degF", record: record(["39 degF", "31 degF"]) });
    expect(cautions.some((text) => text.includes("what the others ask is from memory"))).toBe(true);
    expect(bases.some(({ kind }) => kind === "from memory")).toBe(true);
    // all that is asked in the bands that were not read says that it is from memory, or is of materials and was read
    for (const temperature of ["35 degF", "28 degF", "10 degF"]) {
      const own = tms([temperature, temperature]).asks.filter(({ clause }) => !clause.includes("Material heating") && !clause.includes("TMS 602-02"));
      expect(own.length).toBeGreaterThan(0);
      expect(own.filter(({ clause }) => !clause.startsWith("from memory"))).toEqual([]);
    }
  });

  it("asks more the colder it is, and of units and sand what is printed", () => {
    const count = (temperature: string): number => tms([temperature, temperature]).asks.length;
    expect(["45 degF", "35 degF", "28 degF", "22 degF", "10 degF"].map(count)).toEqual([0, 3, 4, 5, 6]);
    expect(saying(tms(["35 degF", "35 degF"]).asks)).toContain(vector("units-min-20F").expected.unit?.replace(/ \(.*/, "") ?? "-");
    expect(saying(tms(["35 degF", "35 degF"]).asks)).toContain("heat sand that is below 32 degF, to about 50 degF");
  });
});

describe("TMS 602: heat", () => {
  it.each(vectors("tms602-hot-").filter(({ id }) => id !== "tms602-hot-shade-116-0"))("is strictly above: $id", ({ inputs, expected }: Vector) => {
    const { band } = tms([inputs.ambient ?? "", inputs.ambient ?? ""], inputs.wind).now;
    expect(band === "hot").toBe(expected["hot-weather rules"] === "yes");
  });

  it("the second step shades materials and mixer", () => {
    const { inputs, expected } = vector("tms602-hot-shade-116-0");
    const { now, asks } = tms([inputs.ambient ?? "", inputs.ambient ?? ""], inputs.wind);
    expect([now.band, saying(asks).includes(expected.rule ?? "-")]).toEqual(["very hot", true]);
    expect(["115 degF", "115.1 degF", "105.1 degF", "105 degF"].map((temperature) => tms([temperature, temperature], "8 mph").now.band)).toEqual(["hot", "very hot", "hot", "hot"]);
    expect(["105.1 degF", "105 degF"].map((temperature) => tms([temperature, temperature], "8.1 mph").now.band)).toEqual(["very hot", "hot"]);
  });

  it("asks what is printed: mortar at most 120 degF, fog 3 times a day for 3 days, 4 ft ahead", () => {
    const asked = saying(tms(["101 degF", "101 degF"]).asks);
    expect(asked).toContain(vector("hot-mortar-max").expected.mortar?.replace(/ \(.*/, "") ?? "-");
    expect([vector("hot-fog").expected.times, asked.includes("at least 3 times a day until it is 3 days old")]).toEqual(["at least 3 a day until 3 days old", true]);
    expect(asked).toContain(vector("hot-spread-ahead").expected.length ?? "-");
  });

  it("from 40 to 90 degF masonry is laid without special steps", () => {
    expect(vector("tek3-1c-normal").expected.range).toBe("40 to 90 degF (4.4 to 32.2 degC)");
    expect(["40 degF", "65 degF", "90 degF"].map((temperature) => tms([temperature, temperature]).now.band)).toEqual(["normal", "normal", "normal"]);
  });

  it("asks for the wind where the rule turns on it, and nowhere else", () => {
    const tried = (temperature: string): readonly string[] => faults(masonryWeather.try({ ruleSet: "TMS 602-02", stopBelow: "20 degF", record: record([temperature, temperature]) }));
    expect(["90 degF", "90.1 degF", "100 degF", "100.1 degF", "105 degF", "105.1 degF", "115.1 degF"].map(tried)).toEqual([[], ["missing record.readings.0.wind"], ["missing record.readings.0.wind"], [], [], ["missing record.readings.0.wind"], []]);
  });
});

describe("the bands by themselves", () => {
  it("are counted from the normal one outwards, on either side", () => {
    const band = (temperature: "70 degF", wind?: "8 mph"): string => {
      const found = tmsBand({ temperature: quantity("temperature", temperature), wind: wind === undefined ? undefined : quantity("speed", wind) });
      return found === "wind wanted" ? found : `${found.side} ${String(found.step)}`;
    };
    expect(["70 degF", "39 degF", "31 degF", "24 degF", "19 degF", "101 degF", "116 degF"].map((one) => band(one as "70 degF"))).toEqual(["normal 0", "cold 1", "cold 2", "cold 3", "cold 4", "hot 1", "hot 2"]);
    // In a wind of more than 8 mph heat begins 10 degF lower.
    expect([["95 degF", "7.5 mph"], ["95 degF", "10 mph"], ["106 degF", "7.5 mph"], ["106 degF", "10 mph"]].map(([one, wind]) => band(one as "70 degF", wind as "8 mph"))).toEqual(["normal 0", "hot 1", "hot 1", "hot 2"]);
    expect(saying(tms(["101 degF", "101 degF"]).asks)).not.toContain(vector("tms602-hot-shade-116-0").expected.rule);
    const state = (...temperatures: readonly string[]): string => {
      const { side, step } = ukState(temperatures.map((one) => quantity("temperature", one as "1 degC")), temperatures.length - 1);
      return `${side} ${String(step)}`;
    };
    expect([state("10 degC"), state("31 degC"), state("2 degC")]).toEqual(["normal 0", "hot 1", "cold 2"]);
    const rising = ["0 degC", "1 degC", "4 degC"].map((one) => quantity("temperature", one as "1 degC"));
    expect(ukState(rising, 1)).toMatchObject({ side: "cold", step: 1 });
  });
});

describe("the frost rule of the United Kingdom", () => {
  const state = (temperatures: readonly string[]): string => uk(temperatures).hours.at(-1)?.band ?? "";

  it("works at 3.5 degC and falling, may resume at 1.0 degC and rising, stops at 0.5 degC and rising", () => {
    expect([vector("uk-frost-3.5-falling").expected.decision, uk(["4 degC", "3.5 degC"]).hours.at(-1)?.stops]).toEqual(["work", false]);
    const rising = uk(["0.5 degC", "1.0 degC", "2 degC", "3.1 degC"]);
    expect([vector("uk-frost-1.0-rising").expected.decision, rising.hours[1]?.stops, rising.hours[1]?.band]).toEqual(["may resume", false, "cold and rising"]);
    expect([vector("uk-frost-0.5-rising").expected.decision, uk(["0 degC", "0.5 degC", "5 degC"]).hours[1]?.stops]).toEqual(["stop", true]);
  });

  it("at the edges: 3 degC works, 2.9 falling stops; rising to 3 degC alone does not count as above it", () => {
    expect([state(["4 degC", "3 degC"]), state(["4 degC", "2.9 degC"])]).toEqual(["normal", "frost stop"]);
    expect(uk(["0 degC", "1 degC", "3 degC", "2 degC"]).hours[1]?.band).toBe("frost stop");
    expect(uk(["0 degC", "1 degC", "3.1 degC", "2 degC"]).hours[1]?.band).toBe("cold and rising");
    expect(uk(["0 degC", "1 degC", "0.5 degC", "4 degC"]).hours[1]?.band).toBe("frost stop");
    expect(uk(["0 degC", "0.9 degC", "4 degC"]).hours[1]?.band).toBe("frost stop");
  });

  it("the mortar trade has the same figures; heat begins above 30 degC", () => {
    const { expected } = vector("uk-mortar-4C");
    expect([expected["stop below"]?.startsWith("3 degC"), expected.resume]).toEqual([true, "1 degC rising, expected above 3"]);
    const heat = vector("uk-hot-30C").expected.air ?? "";
    expect([uk([heat, heat]).now.band, uk(["30.1 degC", "30.1 degC"]).now.band]).toEqual(["normal", "hot"]);
  });

  it("asks by its own rules and stands on them, in heat as in frost", () => {
    expect(saying(uk(["31 degC", "31 degC"]).asks)).toBe("hot-weather precautions are due above 30 degC");
    expect(saying(uk(["2 degC", "2 degC"]).asks)).toContain("stop: below 3 degC");
    expect(uk(["10 degC", "10 degC"]).asks).toEqual([]);
    const { cautions, bases } = masonryWeather.solve({ ruleSet: "UK warranty standards 2023", record: record(["31 degC", "2 degC"]) });
    expect([cautions, bases].map((told) => JSON.stringify(told).includes("TMS 602"))).toEqual([false, false]);
    expect(bases).toEqual([ukFrost, ukHeat]);
  });

  it("the first hour has no trend and is taken as falling; steady is not rising", () => {
    expect(uk(["2 degC", "4 degC"]).now.stops).toBe(true);
    expect(state(["2 degC", "2 degC"])).toBe("frost stop");
    expect(uk(["2 degC", "2 degC", "4 degC"]).hours[1]?.band).toBe("frost stop");
    // On its way up an hour that is steady is no fall; what was before the hour is no part of its way.
    expect(uk(["0 degC", "1 degC", "1 degC", "4 degC"]).hours[1]?.band).toBe("cold and rising");
    expect(uk(["5 degC", "0 degC", "1 degC", "0.5 degC"]).hours[2]?.band).toBe("frost stop");
  });

  it("needs no temperature of the crew, and takes none", () => {
    expect(faults(masonryWeather.try({ ruleSet: "UK warranty standards 2023", stopBelow: "20 degF", record: record(["50 degF", "50 degF"]) }))).toEqual(["refused stopBelow"]);
    expect(faults(masonryWeather.try({ ruleSet: "TMS 602-02", record: record(["50 degF", "50 degF"]) }))).toEqual(["missing stopBelow"]);
    const message = (input: object): string => {
      const tried = masonryWeather.try({ record: record(["50 degF", "50 degF"]), ...input });
      return tried.ok ? "" : (tried.problems[0]?.message ?? "");
    };
    expect(message({ ruleSet: "TMS 602-02" })).toContain("TMS 602");
    expect(message({ ruleSet: "UK warranty standards 2023", stopBelow: "20 degF" })).not.toContain("TMS 602");
    expect(faults(masonryWeather.try({ ruleSet: "TMS 602", record: record(["50 degF", "50 degF"]), stopBelow: "20 degF" }))).toEqual(["notAChoice ruleSet"]);
  });
});

describe("ahead", () => {
  it("the worst hours, what they ask, and the first in which the crew stops", () => {
    const day = tms(["45 degF", "38 degF", "24 degF", "19 degF", "19.5 degF", "50 degF", "101 degF"]);
    expect([day.now.band, day.asks.length]).toEqual(["normal", 0]);
    expect([day.worstCold?.temperature.toString(), day.worstCold?.at, day.worstHot?.band]).toEqual(["19 degF", "2026-11-02T11:00-06:00[America/Chicago]", "hot"]);
    expect(day.firstStop).toBe("2026-11-02T11:00-06:00[America/Chicago]");
    expect(saying(day.asksAhead)).toMatch(/enclose the masonry.*fog new masonry/);
  });

  it("of hours alike the first is the worst; a further step is worse than a hotter hour", () => {
    const hour = (day: ReturnType<typeof tms>): readonly (string | undefined)[] => [day.worstCold, day.worstHot].map((worst) => worst?.at.slice(11, 16));
    // The first hour is 14:00 UTC, 08:00 in Chicago.
    expect(hour(tms(["22 degF", "22 degF", "24 degF"]))).toEqual(["08:00", undefined]);
    expect(hour(tms(["24 degF", "22 degF", "22 degF"]))).toEqual(["09:00", undefined]);
    expect(hour(tms(["101 degF", "103 degF", "103 degF", "102 degF"]))).toEqual([undefined, "09:00"]);
    // 106 degF in a wind of 10 mph is of the second step, and 112 degF in a calm of the first.
    const readings = readingsFrom("2026-11-02T14:00Z", ["112 degF", "106 degF", "113 degF"]).map((reading, index) => ({ ...reading, wind: index === 1 ? "10 mph" : "0 mph" }));
    const found = masonryWeather({ ruleSet: "TMS 602-02", stopBelow: "20 degF", record: { zone: "America/Chicago", every: "1 h", readings } });
    expect([found.hours.map(({ band }) => band), hour(found)[1]]).toEqual([["hot", "very hot", "hot"], "09:00"]);
  });

  it("the crew stops below its temperature, not at it", () => {
    expect(tms(["20 degF", "20 degF"])).not.toHaveProperty("firstStop");
    expect(tms(["20 degF", "19.9 degF"]).firstStop).toBe("2026-11-02T09:00-06:00[America/Chicago]");
  });

  it("nothing is told where nothing is out of the normal", () => {
    const day = tms(steady("60 degF", 5));
    expect([Object.keys(day), day.asksAhead]).toEqual([["ruleSet", "now", "asks", "asksAhead", "hours"], []]);
  });

  it("protection of what is laid, by a rule that is named", () => {
    const found = masonryWeather({ ruleSet: "TMS 602-02", stopBelow: "20 degF", record: record(steady("30 degF", 30)), protect: { workEnds: "2026-11-02T10:00", rule: "BIA Technical Note 1", meanBy: "mean of the hours" } });
    expect(found.protection?.until).toBe("2026-11-04T10:00-06:00[America/Chicago]");
    const tried = masonryWeather.try({ ruleSet: "TMS 602-02", stopBelow: "20 degF", record: record(steady("30 degF", 20)), protect: { workEnds: "2026-11-02T10:00", rule: "MSJC 1999", meanBy: "mean of the hours" } });
    expect(faults(tried)).toEqual(["refused protect.record"]);
  });

  it("is bounded: a long record makes no parts", () => {
    const { parts, answers } = masonryWeather.solve({ ruleSet: "TMS 602-02", stopBelow: "20 degF", record: record(Array.from({ length: 2000 }, (_, hour) => `${20 + (hour % 60)} degF`)) });
    expect([parts.length, answers.hours.length]).toEqual([0, 2000]);
  }, 30_000);
});

it("a guide for repointing prints 8 degC for 40 degF, which is 4.4", () => {
  expect(vector("repoint-temp").expected.range).toBe("40 to 95 degF (printed '8 and 38 degC')");
  expect([quantity("temperature", "40 degF").to("degC").toFixed(1), quantity("temperature", "95 degF").to("degC").toFixed(1)]).toEqual(["4.4", "35.0"]);
});
