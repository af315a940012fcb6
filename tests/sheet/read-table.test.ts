import { describe, expect, it } from "vitest";
import { InputError } from "../../src/core/index.js";
import { filmReadingCheck } from "../../src/film/index.js";
import { allRows, readFilmReadings, readOpenings, readTable, readTemperatures, readWalls, type TableRow } from "../../src/sheet/index.js";

const width = { is: "length", names: ["width", "breadth"], says: "width of the wall" } as const;

async function problemsOf(rows: AsyncIterable<unknown>): Promise<readonly string[]> {
  try {
    await allRows(rows as AsyncIterable<TableRow<unknown>>);
  } catch (error) {
    if (error instanceof InputError) return error.problems.map(({ message }) => message);
    throw error;
  }
  return [];
}

describe("a table", () => {
  it.each(["Width (ft)", "width [ft]", "WIDTH, ft", "width ft", "breadth (feet)"])("takes the unit from its heading: %s", async (heading) => {
    const { values } = await allRows(readTable(`"${heading}"\n40\n6 in\n"5' 6-3/8"""\n`, { width }));
    expect(values.map((one) => one.width.toNumber("in"))).toEqual([480, 6, 66.375]);
  });

  it("says which row, which column and why, and reads the others", async () => {
    const { values, problems } = await allRows(readWalls("wall,width (ft),height\nnorth,40,8 ft\nsouth,x,9 ft\neast,30,\nwest,20,8\nyard,12,7 ft\n"));
    expect(values.map(({ name }) => name)).toEqual(["north", "yard"]);
    expect(problems.map(({ path, code }) => [path.join("."), code])).toEqual([["rows.3.width (ft)", "notANumber"], ["rows.4.height", "missing"], ["rows.5.height", "noUnit"]]);
  });

  it("reads decimal commas only where told", async () => {
    const text = 'wall;width [m];height\nnorth;1.250,5;"2,4 m"\n';
    const { values } = await allRows(readWalls(text, { decimalComma: true }));
    expect(values.map((one) => [one.width.toString(), one.height.toString()])).toEqual([["1250.5 m", "2.4 m"]]);
    expect((await allRows(readWalls(text))).problems.map(({ code }) => code)).toEqual(["notANumber", "comma"]);
    expect((await allRows(readWalls("wall;width [m];height\nnorth;1.25;2,4 m\n", { decimalComma: true }))).problems).toHaveLength(1);
  });

  it("has headings of one's own", async () => {
    const { values } = await allRows(readTable("Wand,Breite (m)\nNord,4\n", { width }, { headings: { width: "Breite (m)" } }));
    expect(values[0]?.width.toString()).toBe("4 m");
  });

  it("reads how many, a choice, and yes or no", async () => {
    const { values } = await allRows(readOpenings("wall,width,height,how many,turned with,door\nnorth,3 ft,7 ft,2,Corner,yes\nnorth,30 in,4 ft,,,\n"));
    expect(values.map(({ count, returnUnits, toBase }) => [count?.toNumber(), returnUnits, toBase])).toEqual([[2, "corner", true], [undefined, undefined, undefined]]);
  });

  it.each([
    ["a column that is missing", "wall,height\nnorth,8 ft\n", ["rows[1].width (width of the wall): is missing; name a column \"width\" or \"length\" or \"wall width\" or \"wall length\""]],
    ["a heading that is misspelt", "wall,widht,height\n", ['rows[1].width (width of the wall): "widht": did you mean "width" or "length" or "wall width" or "wall length"?']],
    ["a column twice", "wall,width,length,height\n", ['rows[1].width (width of the wall): "width" and "length": they are the same column; say which one is meant']],
  ])("refuses %s", async (_what, text, wanted) => {
    expect(await problemsOf(readWalls(text))).toEqual(wanted);
  });
});

describe("a crew's sheet", () => {
  it("of film readings is what the check takes", async () => {
    const { values } = await allRows(readFilmReadings("spot,reading 1 (mil),reading 2 (mil),note\nby the door,16,18,\nat the corner,14,,wind\n"));
    // 14 mil is under 15 mil; 16 and 18 lie between 15 and 22.
    expect(filmReadingCheck({ film: "wet", rule: "band", least: "15 mil", most: "22 mil", spots: values }).fails.map(({ where, is }) => [where, is])).toEqual([["at the corner", "under"]]);
  });

  it("of temperatures", async () => {
    const { values } = await allRows(readTemperatures("date and time,air (degF)\n2026-06-01T08:00,52\n"));
    expect(values.map(({ at, temperature }) => [at, temperature.toString()])).toEqual([["2026-06-01T08:00", "52 degF"]]);
  });
});
