// Workbooks that LibreOffice wrote: texts shared, numbers in all their binary digits, days as numbers.
import { describe, expect, it } from "vitest";
import { allRows, readTemperatures, readWalls } from "../../src/sheet/index.js";
import { dateText, isDateFormat } from "../../src/sheet/reading/dates.js";
import { lacking, Office } from "./office/office.js";

describe.skipIf(lacking !== undefined)("a workbook of another program", () => {
  it("is read as its CSV is, with days", async () => {
    const office = new Office();
    const walls = "wall,width (ft),height (ft)\nnorth,0.1,8.05\n\"yard, by the gate\",40,9\n";
    const record = "at,temperature (degF)\n2026-06-01,52\n2026-06-02,55.5\n";
    const [wallBook, recordBook] = [office.fromCsv("walls", walls), office.fromCsv("record", record)];
    office.close();
    const read = await allRows(readWalls(wallBook));
    expect(read).toEqual(await allRows(readWalls(walls)));
    expect(read.values.map(({ name, width, height }) => [name, width.toString(), height.toString()])).toEqual([["north", "0.1 ft", "8.05 ft"], ["yard, by the gate", "40 ft", "9 ft"]]);
    const { values } = await allRows(readTemperatures([recordBook]));
    expect(values.map(({ at, temperature }) => [at, temperature.toString()])).toEqual([["2026-06-01", "52 degF"], ["2026-06-02", "55.5 degF"]]);
  }, 300_000);
});

// Day 1 is 1 January 1900, and 1900 is taken for a leap year; so 1 January 2026 is day 46023, and 1 June, 151 days later, 46174.
describe("a day and a time", () => {
  it.each([[46174, false, "2026-06-01"], [46174 + 1 / 3, false, "2026-06-01T08:00"], [46174 + 9.5 / 24, false, "2026-06-01T09:30"], [46174 - 1462, true, "2026-06-01"]])("%d is read (from 1904: %s) as %s", (serial, since1904, text) => {
    expect(dateText(serial, since1904)).toBe(text);
  });

  it.each([[14, undefined, true], [0, undefined, false], [164, "yyyy-mm-dd", true], [164, '0.0" days"', false], [164, "[Red]0.00", false], [164, "[h]:mm", true], [164, "General", false]])("format %d %s", (id, code, is) => {
    expect(isDateFormat(id, code)).toBe(is);
  });
});
