import { describe, expect, it } from "vitest";
import { temperatureChart } from "../../src/pictures/temperature-chart.js";
import { described, numbersIn, of, type Tag, tagsIn } from "./read-svg.js";
import { longWeather, temperatures } from "./samples.js";

const number = (tag: Tag | undefined, name: string): number => Number(tag?.attributes[name]);
const tags = tagsIn(temperatureChart(temperatures));
const [from, until] = [106, 806];
/** 14 hours from 14:00 lie between the two ends of the axis: 50 an hour. */
const x = (hours: number): number => from + ((until - from) * hours) / 14;

describe("temperatureChart", () => {
  it("draws each reading at its height, level until the next", () => {
    const tick = (text: string): number => number(of(tags, "degrees", "text").find((one) => one.text === text), "y");
    const scale = (tick("20") - tick("40")) / 20;
    const points = numbersIn(of(tags, "record", "polyline")[0]?.attributes.points ?? "");
    const degrees = [48, 44, 41, 38, 35, 33, 31, 28, 26, 24, 22, 30, 36, 42];
    expect(points).toHaveLength(14 * 4);
    degrees.forEach((one, hour) => {
      const y = tick("20") - (one - 20) * scale;
      [x(hour), y, x(hour + 1), y].forEach((place, index) => {
        expect(points[hour * 4 + index]).toBeCloseTo(place, 1);
      });
    });
  });

  it("hatches each hour by its band, and marks where work stops", () => {
    // TMS 602 by the edges 40, 32, 25 and 20 degF: normal to 17:00, cold to 20:00, colder to 23:00, coldest to 01:00, back up again.
    const boxes = of(tags, "bands", "rect");
    expect(boxes).toHaveLength(14);
    expect(boxes.map((box) => number(box, "x"))).toEqual(Array.from({ length: 14 }, (_, hour) => expect.closeTo(x(hour), 1) as number));
    // 48, 44, 41 and 42 degF are normal and stay white.
    expect(of(tags, "bands", "path")).toHaveLength(10);
    expect(of(tags, "keys", "text").map(({ text }) => text)).toEqual(["normal", "cold, 32 to 40 degF", "cold, 25 to 32 degF", "cold, 20 to 25 degF"]);
    // Below 25 degF, the crew's own: 24 and 22 degF at 23:00 and 00:00.
    expect(of(tags, "stops", "line").map((one) => [number(one, "x1"), number(one, "x2")])).toEqual([[x(9), x(10)], [x(10), x(11)]]);
    expect(described(temperatureChart(temperatures))).toContain("Bands: normal from 2026-11-02 14:00; cold, 32 to 40 degF from 2026-11-02 17:00; cold, 25 to 32 degF from 2026-11-02 20:00; cold, 20 to 25 degF from 2026-11-02 23:00; cold, 25 to 32 degF from 2026-11-03 01:00; cold, 32 to 40 degF from 2026-11-03 02:00; normal from 2026-11-03 03:00. Work stops first at 2026-11-02 23:00.");
  });

  it("writes the hours and the dates where they belong", () => {
    const written = of(tags, "clock", "text").map((one) => [one.text, number(one, "x")] as const);
    expect(written).toContainEqual(["18:00", x(4)]);
    expect(written).toContainEqual(["00:00", x(10)]);
    expect(written).toContainEqual(["2026-11-03", x(10)]);
  });

  it("draws the age beside the clock: at the reference temperature both are one", () => {
    const [age] = of(tags, "age", "polyline");
    const points = numbersIn(age?.attributes.points ?? "");
    const passed = of(tags, "age", "line").find(({ attributes }) => attributes["stroke-dasharray"] !== undefined);
    expect([number(passed, "x1"), number(passed, "y1"), number(passed, "x2"), number(passed, "y2")]).toEqual([...points.slice(0, 2), ...points.slice(-2)].map((place) => expect.closeTo(place, 1) as number));
    expect(of(tags, "age", "text").map(({ text }) => text)).toEqual(expect.arrayContaining(["age 13 h", "passed 13 h"]));
  });

  it("draws each hold from when the work before was done, with its window", () => {
    const boxes = of(tags, "hold", "rect").map((box) => [number(box, "x"), number(box, "x") + number(box, "width")]);
    // At 70 degF the waits pass as they are: tooling 15:00 + 30 min to 17:00, the coat 14:00 + 4 h, the ledger past the end of the record.
    expect(boxes).toEqual([[x(1), x(1.5)], [x(1.5), x(3)], [x(0), x(4)], [x(2), x(14)]].map((ends) => ends.map((end) => expect.closeTo(end, 1) as number)));
    expect(of(tags, "hold", "text").map(({ text }) => text)).toEqual([
      "tooling", "done 2026-11-02 15:00, earliest 15:30, typical 16:00, latest 17:00",
      "coat", "done 2026-11-02 14:00, earliest 18:00",
      "ledger", "done 2026-11-02 16:00, earliest after the end of the record",
    ]);
    const usual = of(tags, "hold", "line").find(({ attributes }) => attributes["stroke-width"] === "3");
    expect(number(usual, "x1")).toBeCloseTo(x(2), 1);
  });

  it("leaves out hours where they would stand close", () => {
    // 24 hours on 700 are 29 to an hour and 58 to two.
    const hours = of(tagsIn(temperatureChart(longWeather(1))), "clock", "text").filter(({ text }) => text.endsWith(":00"));
    expect(hours.map(({ text }) => text).slice(0, 3)).toEqual(["00:00", "02:00", "04:00"]);
  });

  it("writes days where hours have no room", () => {
    const written = of(tagsIn(temperatureChart(longWeather(20))), "clock", "text").map(({ text }) => text);
    expect(written.filter((text) => text === "00:00").length).toBeGreaterThan(4);
    expect(written).toContain("2026-07-01");
    expect(written.length).toBeLessThan(24);
  });

  it("says what is wanted where it is given something else", () => {
    expect(() => temperatureChart({} as never)).toThrow("pictures.temperature-chart: weather: is missing; give the answers of masonryWeather as they came");
    const [first] = temperatures.age?.intervals ?? [];
    const { lasts, temperature, ageFactor, age, total } = first as NonNullable<typeof first>;
    expect(() => temperatureChart({ ...temperatures, age: { ...(temperatures.age as NonNullable<typeof temperatures.age>), intervals: [{ lasts, temperature, ageFactor, age, total }] } })).toThrow("age.intervals[0].from: is missing; a time with its distance from UTC is wanted");
    const { hours } = temperatures.weather;
    expect(() => temperatureChart({ weather: { ...temperatures.weather, hours: [...hours].reverse() } })).toThrow("weather.hours[1].at: 2026-11-03T02:00-06:00[America/Chicago]: the hours stand in the order of time, each once");
  });
});
