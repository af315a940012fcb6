// One wall a row: the rows that are right go on, those that are wrong say everything that is wrong with them.
import { describe, expect, it } from "vitest";
import { InputError, problemText } from "../../src/core/index.js";
import { readRows, readTable } from "../../src/sheet/index.js";
import { type Assembly, type Job, takeOff, takeOffRows, type TakenRow, type WallPattern } from "../../src/takeoff/index.js";
import { spanish } from "../../src/wording/index.js";
import { entranceInFeet } from "./entrance-job.js";

const assembly: Assembly = {
  measuredTo: "backing",
  layers: [
    { kind: "studs", spacing: "16 in" },
    { kind: "boards", name: "sheathing", acrossStuds: "4 ft", alongStuds: "8 ft", edgesBacked: false, screwSpacing: "8 in" },
    { kind: "setting bed", name: "setting mortar", bed: { from: "thickness", thickness: "1/2 in" }, backButter: "1/8 in", butteredShare: "100 %" },
    { kind: "units", name: "flat units", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", unitThickness: "1 in", corners: { name: "corner units", longLeg: "8 in", shortLeg: "4 in" } },
  ],
  packs: {
    "sheathing screws": { pieces: 1000 },
    "setting mortar": { bag: "50 lb", yield: "0.45 ft3", waterLow: "5 qt", waterHigh: "6 qt" },
    "flat units": { pieces: 40 },
    "corner units": { pieces: 12 },
  },
  allowances: { sheathing: { waste: "10 %" }, "sheathing screws": { waste: "5 %" }, "setting mortar": { waste: "15 %" }, "flat units": { waste: "8 %" }, "corner units": { waste: "5 %" } },
};

const wall: WallPattern = {
  name: { column: "wall" },
  shape: { kind: "rectangle", width: { column: "width" }, height: { column: "height" } },
  openings: [{ shape: { kind: "rectangle", width: { column: "window width" }, height: { column: "window height" } }, count: { column: "windows" }, returnDepth: "4 in", returnUnits: "corner", toBase: false }],
  outsideCorners: [{ height: { column: "height" }, count: { column: "corners" }, otherFace: "unclad" }],
};

const options = { assembly, wall };

async function all(rows: Parameters<typeof takeOffRows>[0], of = options): Promise<readonly TakenRow[]> {
  const taken: TakenRow[] = [];
  for await (const one of takeOffRows(rows, of)) taken.push(one);
  return taken;
}

const messages = (row: TakenRow | undefined): readonly string[] => (row === undefined || row.ok ? [] : row.problems.map(({ code, message }) => `${code} ${message}`));

function without<Value>(key: string, of: Readonly<Record<string, Value>>): Readonly<Record<string, Value>> {
  return Object.fromEntries(Object.entries(of).filter(([name]) => name !== key));
}

const header = "wall,width,height,windows,window width,window height,corners";

describe("rows that are right", () => {
  const rows = [
    { wall: "A", width: "40 ft", height: "10 ft", windows: 2, "window width": "4 ft", "window height": "5 ft", corners: 1 },
    { wall: "B", width: "24 ft", height: "9 ft", windows: "0", "window width": "", "window height": "", corners: "0" },
  ];

  it("give what the same walls give as jobs", async () => {
    const [a, b] = await all(rows);
    const elevations: readonly Job["elevations"][] = [
      [{ name: "A", shape: { kind: "rectangle", width: "40 ft", height: "10 ft" }, openings: [{ shape: { kind: "rectangle", width: "4 ft", height: "5 ft" }, count: 2, returnDepth: "4 in", returnUnits: "corner", toBase: false }], outsideCorners: [{ height: "10 ft", otherFace: "unclad" }] }],
      [{ name: "B", shape: { kind: "rectangle", width: "24 ft", height: "9 ft" }, openings: [], outsideCorners: [] }],
    ];
    const [packs, allowances] = [without("corner units", assembly.packs), without("corner units", assembly.allowances)];
    for (const [row, job] of [[a, { ...assembly, elevations: elevations[0]! }], [b, { ...assembly, packs, allowances, elevations: elevations[1]! }]] as const) {
      if (row?.ok !== true) throw new Error(messages(row).join("\n"));
      const told = row.solution.answers.lines.map(({ item, net, packs: some }) => [item, net.toJSON(), some?.toJSON()]);
      expect(told).toEqual(takeOff(job).lines.map(({ item, net, packs: some }) => [item, net.toJSON(), some?.toJSON()]));
    }
  });

  it("add up, each wall rounded by itself", async () => {
    const taken = takeOffRows(rows, options);
    for await (const one of taken) expect(one.ok).toBe(true);
    const { rows: count, refused, items } = taken.totals();
    expect([count, refused]).toEqual([2, 0]);
    // A: (400 - 40)/32 * 1.1 = 12.375: 13; B: 216/32 * 1.1 = 7.425: 8
    expect(items.find(({ item }) => item === "sheathing")?.packs?.toString()).toBe("21");
    // 360/32 + 216/32 = 18
    expect(items.find(({ item }) => item === "sheathing")?.net.toString()).toBe("18");
  });

  it("come as they are asked for: no row is read ahead", async () => {
    let given = 0;
    function* counted(): Generator<(typeof rows)[number]> {
      for (const row of rows) {
        given += 1;
        yield row;
      }
    }
    const iterator = takeOffRows(counted(), options)[Symbol.asyncIterator]();
    expect(given).toBe(0);
    await iterator.next();
    expect(given).toBe(1);
  });
});

describe("rows that are wrong", () => {
  it("say what is wrong under row and column, and the others go on", async () => {
    const taken = await all(readRows([header, "A,40,10 ft,2,4 ft,5 ft,1", "B,24 ft,9 gal,x,,,0", "C,24 ft,9 ft,0,,,0", ""].join("\n")));
    expect(taken.map(({ row, ok }) => [row, ok])).toEqual([[2, false], [3, false], [4, true]]);
    expect(messages(taken[0])).toEqual([expect.stringMatching(/^noUnit rows\[2\]\.width \(width of the wall\): "40" has no unit/)]);
    expect(messages(taken[1]).map((message) => message.split(":")[0])).toEqual([
      "missing rows[3].window width", "missing rows[3].window height", "wrongDimension rows[3].height (height of the wall)", "notANumber rows[3].windows (how many alike)",
    ]);
  });

  it("are told in Spanish to the last word", async () => {
    const taken = await all([{ wall: "A", width: "40", height: "9 gal", windows: 0, corners: 0 }]);
    const told = taken.flatMap((row) => (row.ok ? [] : row.problems.map((one) => problemText(one, spanish))));
    expect(told).toEqual([
      'rows[2].width (ancho de la pared): "40" no lleva unidad; escriba un número y una de estas unidades: ft, in, m, mm, mil, yd',
      expect.stringMatching(/^rows\[2\]\.height \(.*\): "9 gal" es .*; escriba un número y una de estas unidades: /),
    ]);
  });

  it("a window larger than its wall is told under its row", async () => {
    const [row] = await all([{ wall: "A", width: "4 ft", height: "10 ft", windows: 1, "window width": "5 ft", "window height": "5 ft", corners: 0 }]);
    expect(messages(row)[0]).toMatch(/^refused rows\[2\]\..*: an opening 5 ft wide and 5 ft high: A is 4 ft wide/);
  });

  it("a column that is missing is told by its name", async () => {
    const [row] = await all(readRows("wall,width,windows,corners\nA,40 ft,0,0\n"));
    expect(messages(row)).toEqual([expect.stringMatching(/^missing rows\[2\]\.height: .*no such column, or an empty cell/)]);
  });

  it("a formula in a cell is refused, in a name too", async () => {
    const base = { width: "40 ft", height: "10 ft", windows: 0, corners: 0 };
    const taken = await all([{ ...base, wall: "=HYPERLINK(A1)" }, { ...base, wall: "A", width: "=B2*2" }, { ...base, wall: "B" }, { ...base, wall: "@SUM(A1)" }]);
    expect(taken.map(({ ok }) => ok)).toEqual([false, false, true, false]);
    expect(messages(taken[0])).toEqual([expect.stringMatching(/^refused rows\[2\]\.wall: "=HYPERLINK\(A1\)": it is a formula/)]);
    expect(messages(taken[1])).toEqual([expect.stringMatching(/^refused rows\[3\]\.width: "=B2\*2": it is a formula/)]);
  });

  it("rows of a table that could not be read are told, and the others go on, with their quantities", async () => {
    const columns = { wall: { is: "text", names: ["wall"], says: "wall" }, width: { is: "length", names: ["width"], says: "width" }, height: { is: "length", names: ["height"], says: "height" } } as const;
    const plain: WallPattern = { name: { column: "wall" }, shape: { kind: "rectangle", width: { column: "width" }, height: { column: "height" } }, openings: [], outsideCorners: [] };
    const text = ["wall,width (ft),height", "A,40,10 ft", "B,40,10", "C,40,10 gal", "D,24,9 ft", 'E,"40"x,10 ft'].join("\n");
    const taken = await all(readTable(text, columns), { assembly, wall: plain });
    expect(taken.map(({ row, ok }) => [row, ok])).toEqual([[2, true], [3, false], [4, false], [5, true], [6, false]]);
    expect(messages(taken[1])[0]).toMatch(/^noUnit rows\[3\]\.height/);
    expect(messages(taken[4]).join("\n")).toMatch(/quote/);
    // 216/32 * 1.1 = 7.425
    expect(taken[3]?.ok === true ? taken[3].solution.answers.lines[0]?.packs?.toString() : "").toBe("8");
  });

  it("a stray quote is a problem with its row, and the others go on", async () => {
    const taken = await all(readRows([header, "A,40 ft,10 ft,0,,,0", 'B,"40 ft,10 ft,0,,,0', "C,40 ft,10 ft,0,,,0", 'D,40 ft,"10 ft",0,,,0'].join("\n")));
    expect(taken.map(({ row, ok }) => [row, ok])).toEqual([[2, true], [3, false], [4, true], [5, true]]);
    expect(messages(taken[1])).toEqual(["refused rows[3]: a quote in it does not end"]);
  });

  it("what is no row is told as one", async () => {
    const taken = await all([null, 3, "A", []] as never);
    expect(taken.map((row) => messages(row)[0]?.split(";")[0])).toEqual(["wrongKind rows[2]: null cannot be read", "wrongKind rows[3]: 3 cannot be read", 'wrongKind rows[4]: "A" cannot be read', "wrongKind rows[5]: a list cannot be read"]);
  });

  it("are counted", async () => {
    const taken = takeOffRows([{ wall: "A" }, { wall: "B", width: "10 ft", height: "8 ft", windows: 0, corners: 0 }], options);
    for await (const one of taken) expect(typeof one.ok).toBe("boolean");
    expect([taken.totals().rows, taken.totals().refused]).toEqual([2, 1]);
  });
});

describe("the assembly", () => {
  it("is read once, before the first row, and refused with all its problems", () => {
    const bad = { ...assembly, measuredTo: "paint", packs: { "flat units": { pieces: 0 } } } as unknown as Assembly;
    const attempt = (): unknown => takeOffRows([], { assembly: bad, wall });
    expect(attempt).toThrow(InputError);
    expect(attempt).toThrow(/assembly\.measuredTo[\s\S]*assembly\.packs\.flat units\.pieces/);
  });

  it("may hold more than a wall uses, but not less", async () => {
    const allowances = without("setting mortar", assembly.allowances);
    const [row] = await all([{ wall: "B", width: "24 ft", height: "9 ft", windows: 0, corners: 0 }], { wall, assembly: { ...assembly, allowances, packs: { ...assembly.packs, other: { pieces: 3 } } } });
    expect(messages(row)).toEqual([expect.stringMatching(/^missing rows\[2\]\.allowances\.setting mortar/)]);
  });
});

describe("long work", () => {
  function* walls(count: number): Generator<Record<string, string | number>> {
    for (let index = 0; index < count; index += 1) yield { wall: `wall ${String(index)}`, width: "24 ft", height: "9 ft", windows: 0, corners: 0 };
  }

  it("tells its progress after every row", async () => {
    const told: number[] = [];
    await all(walls(5), { ...options, progress: ({ rows }: { readonly rows: number }) => void told.push(rows) } as typeof options);
    expect(told).toEqual([1, 2, 3, 4, 5]);
  });

  it("ends with the reason of the signal, and closes what it reads from", async () => {
    const stop = new AbortController();
    let closed = false;
    function* source(): Generator<Record<string, string | number>> {
      try {
        yield* walls(100);
      } finally {
        closed = true;
      }
    }
    const work = async (): Promise<number> => {
      let rows = 0;
      for await (const one of takeOffRows(source(), { ...options, signal: stop.signal })) {
        rows += Number(one.ok);
        if (rows === 3) stop.abort(new Error("enough"));
      }
      return rows;
    };
    await expect(work()).rejects.toThrow("enough");
    expect(closed).toBe(true);
  });

  it("lets a timer stop it", async () => {
    const work = async (): Promise<void> => {
      for await (const one of takeOffRows(walls(1e6), { ...options, signal: AbortSignal.timeout(20) })) if (!one.ok) throw new Error(messages(one).join());
    };
    await expect(work()).rejects.toThrow(/time/i);
  });
});

it("rows are frozen to the last line, worked out together or alone", async () => {
  const rows = ["24 ft", "40 ft", "61/3 ft", "30 ft"].map((width) => ({ wall: width, width, height: "9 ft", windows: 0, corners: 0 }));
  const taken = await all(rows);
  expect(taken.map((row) => Object.isFrozen(row) && row.ok && Object.isFrozen(row.lines) && row.lines.length > 0 && row.lines.every((line) => Object.isFrozen(line)))).toEqual([true, true, true, true]);
});

it("prices add up over the rows", async () => {
  const prices = { smallest: "0.01 USD", items: { sheathing: { each: "31.15 USD" } } };
  const taken = takeOffRows([{ wall: "A", width: "24 ft", height: "9 ft", windows: 0, corners: 0 }, { wall: "B", width: "40 ft", height: "9 ft", windows: 0, corners: 0 }], { wall, assembly: { ...assembly, prices } });
  for await (const one of taken) expect(one.ok).toBe(true);
  // 216/32 * 1.1 = 7.425: 8 sheets; 360/32 * 1.1 = 12.375: 13; 21 * 31.15 = 654.15
  expect(taken.totals().cost).toBe("654.15 USD");
});

it("a gable can be a row as well", async () => {
  const gable: WallPattern = { name: { column: "wall" }, shape: { kind: "gable", width: { column: "span" }, height: { column: "rise" } }, openings: [], outsideCorners: [] };
  const [row] = await all([{ wall: "east", span: "24 ft", rise: "5 ft" }], { assembly, wall: gable });
  // 60 ft2 / 32 * 1.1 = 2.0625
  expect(row?.ok === true ? row.solution.answers.lines[0]?.packs?.toString() : messages(row)).toBe("3");
  expect(entranceInFeet.elevations).toHaveLength(3);
});
