import { strFromU8, unzipSync } from "fflate";
import Papa from "papaparse";
import { describe, expect, it, vi } from "vitest";
import { calculation, quantity } from "../../src/core/index.js";
import { coursedFace } from "../../src/joints/index.js";
import { bedMortar } from "../../src/mortar/index.js";
import { csvText, orderWorkbook, recordTable, spreadsheetFormula, stepsTable, workbook } from "../../src/sheet/index.js";
import { parseFormula } from "../../src/core/formula.js";
import { legalName, legalTitle } from "../../src/sheet/workbook/defined-names.js";
import { takeOff } from "../../src/takeoff/index.js";
import { byHand } from "../support/demo.js";

const wall = { area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" } as const;

/** A part of a workbook as text. */
const part = (file: Uint8Array, name: string): string => strFromU8(unzipSync(file)[name]!);

describe("a formula in a spreadsheet", () => {
  // There a minus sign binds before a power: -2 ^ 2 is 4, where ours is -4.
  it.each([
    ["-a ^ 2", "-(a ^ 2)"],
    ["(-a) ^ 2", "(-a) ^ 2"],
    ["a - -b ^ 2", "a - -(b ^ 2)"],
    ["a - (b - c) * d", "a - (b - c) * d"],
    ["a / (b * c)", "a / (b * c)"],
    ["a ^ (2 / 9.5)", "a ^ (2 / 9.5)"],
    ["a ^ (-2)", "a ^ (-2)"],
    ["ceil(a / b) * c", "CEILING(a / b - (1 + ABS(a / b)) * 1E-12, 1) * c"],
    ["floor(a) + round(b)", "INT(a + (1 + ABS(a)) * 1E-12) + ROUND((b) * (1 + 1E-12), 0)"],
    ["ln(a) + log10(b) * pi", "LN(a) + LOG10(b) * PI()"],
    ["min(a, b, max(c, 2))", "MIN(a, b, MAX(c, 2))"],
  ])("%s is %s", (ours, theirs) => {
    expect(spreadsheetFormula(parseFormula(ours))).toBe(theirs);
  });
});

describe("a defined name", () => {
  it.each([["A1", "A1_"], ["bed2", "bed2_"], ["R", "R_"], ["c", "c_"], ["R1C1", "R1C1_"], ["rc", "rc_"], ["XFD1048576", "XFD1048576_"], ["true", "true_"], ["2nd coat", "_2nd_coat"], ["area", "area"], ["%", "percent"], ["lb/ft3", "lb_per_ft3"], ["largest1", "largest1"]])(
    "%s becomes %s",
    (text, name) => {
      expect(legalName(text)).toBe(name);
    },
  );

  it("of a sheet is short and has no mark that is forbidden", () => {
    expect(legalTitle("Wall [north]: 1/2 * a ? very long title indeed 12")).toBe("Wall north 1 2 a very long 12");
    expect(legalTitle("'quoted'")).toBe("quoted");
    expect(legalTitle("History")).toBe("History sheet");
  });
});

describe("a workbook", () => {
  const file = workbook([coursedFace.solve(wall)], { title: "Joints", limitsOf: [coursedFace] });

  it("has formulas under readable names, and its units in cells", () => {
    expect(part(file, "xl/worksheets/sheet2.xml")).toContain("<f>area * jointShare * depth</f>");
    expect(part(file, "xl/worksheets/sheet2.xml")).toContain("<f>volume / unit_ft3</f>");
    expect(part(file, "xl/workbook.xml")).toContain("<definedName name=\"given_area_ft2\">'Givens'!$B$5</definedName>");
    // One square foot is 0.09290304 m2 by definition.
    expect(part(file, "xl/worksheets/sheet3.xml")).toContain("<v>0.09290304</v>");
  });

  it("keeps limits: beyond them there is no answer", () => {
    expect(part(file, "xl/worksheets/sheet2.xml")).toContain("<f>IF(AND(ISNUMBER(C5), C5 &gt; 0), C5 * unit_ft2, NA())</f>");
  });

  it("is the same bytes each time, in every time zone, with no date in it", () => {
    for (const one of ["UTC", "Pacific/Auckland", "America/Los_Angeles"]) {
      vi.stubEnv("TZ", one);
      expect(workbook([coursedFace.solve(wall)], { title: "Joints", limitsOf: [coursedFace] })).toEqual(file);
    }
    vi.unstubAllEnvs();
    expect(Object.values(unzipSync(file)).map((bytes) => strFromU8(bytes)).join("")).not.toMatch(/20\d\d-\d\d-\d\d/);
  });

  it("links an answer that was handed to another calculation", () => {
    const face = coursedFace.solve(wall);
    const bed = bedMortar.solve({ area: quantity("area", "312 ft2"), bed: "1/2 in", backButter: "1/8 in", butteredShare: "100 %", waste: "10 %", bagYield: face.answers.volume });
    expect(part(workbook([face, bed]), "xl/worksheets/sheet3.xml")).toContain("<f>coursedFace_volume</f>");
  });

  it("takes a calculation of one's own, and texts that would run stand there as texts", () => {
    const own = calculation({
      id: "own.c",
      title: "=cmd|'/c calc'!A1",
      given: { c: { is: "length", unit: "ft", symbol: "+c", says: "@side & <b>", above: 0 } },
      steps: { r: { is: "area", unit: "ft2", symbol: "-r", formula: "c ^ 2", basis: byHand } },
    });
    const written = workbook([own.solve({ c: "3 ft" })]);
    const sheet = part(written, "xl/worksheets/sheet2.xml");
    expect(sheet).toContain("@side &amp; &lt;b&gt;");
    expect(sheet).toContain("<f>c_ ^ 2</f>");
    expect([...sheet.matchAll(/<f>([^<]*)/g)].map(([, formula]) => formula).join(" ")).not.toContain("cmd");
    expect(part(written, "xl/styles.xml")).toContain('quotePrefix="1"');
  });
});

describe("a CSV", () => {
  const table = recordTable([{ wall: 'north, "A"\nend', area: quantity("area", "320.5 ft2"), note: "=SUM(A1)" }, { wall: "-5 ft", area: quantity("area", "-1 ft2"), note: "\t@x" }]);

  it("reads back, by another reader too", () => {
    const { data } = new Papa.Parser({ delimiter: ",", newline: "\r\n" }).parse(csvText(table), 0, false);
    expect(data.slice(0, 3)).toEqual([["wall", "area", "area unit", "note"], ['north, "A"\nend', "320.5", "ft2", "'=SUM(A1)"], ["'-5 ft", "-1", "ft2", "'\t@x"]]);
  });

  it("has semicolons where decimals have commas", () => {
    expect(csvText(recordTable([{ a: quantity("length", "2.5 m") }]), { decimalComma: true })).toBe("a;a unit\r\n2,5;m\r\n");
  });

  it("of worked steps has every formula", () => {
    expect(csvText(stepsTable(coursedFace.solve(wall)))).toContain("volume,2.38037109375,ft3,area * jointShare * depth");
  });
});

it("the sheet of givens says where one area stands in several cells: who changes one wall changes all", () => {
  const wall = { name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] } as const;
  const barrier = { kind: "barrier", name: "barrier", wetFilm: "18 mil", coats: 2 } as const;
  const foam = { kind: "foam board", name: "foam", boardWidth: "4 ft", boardHeight: "8 ft" } as const;
  const buying = { packs: { barrier: { volume: "5 gal" } }, allowances: { barrier: { lossShare: "20 %" } } } as const;
  const sheetOf = (list: ReturnType<typeof takeOff.solve>): string => strFromU8(unzipSync(orderWorkbook(list))["xl/worksheets/sheet2.xml"] ?? new Uint8Array());
  const one = takeOff.solve({ measuredTo: "backing", elevations: [wall], layers: [barrier], ...buying });
  const two = takeOff.solve({ measuredTo: "backing", elevations: [wall], layers: [foam, barrier], packs: buying.packs, allowances: { ...buying.allowances, foam: { waste: "10 %" } } });
  expect(sheetOf(one)).not.toContain("change each");
  expect(sheetOf(two)).toContain("Measured apart for several layers, so change each: walls, openings in.");
});
