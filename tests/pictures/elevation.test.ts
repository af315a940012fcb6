import { describe, expect, it } from "vitest";
import { boardLayout } from "../../src/boards/board-layout.js";
import { boardElevation } from "../../src/pictures/elevation.js";
import { faultsIn, numbersIn, of, type Tag, tagsIn } from "./read-svg.js";

type Input = Parameters<typeof boardLayout>[0];

const wall: Input = {
  wall: { kind: "rectangle", width: "20 ft", height: "9 ft" },
  openings: [
    { shape: { kind: "rectangle", width: "3 ft", height: "4 ft" }, left: "54 in", bottom: "3 ft" },
    { shape: { kind: "rectangle", width: "3 ft", height: "80 in" }, left: "12 ft", bottom: "0 ft" },
  ],
  board: { width: "3 ft", length: "5 ft" },
  orientation: "flat",
  stagger: "32 in",
  studs: { spacing: "16 in", start: "16 in" },
  edgesBacked: true,
  reuseOffcuts: true,
  screws: { spacing: "8 in" },
};

const gableFront: Input = {
  ...wall,
  wall: { kind: "polygon", points: [["0", "0"], ["6", "0"], ["6", "2.4"], ["3", "4"], ["0", "2.4"]].map(([x, y]) => ({ x: `${String(x)} m`, y: `${String(y)} m` })) },
  openings: [{ shape: { kind: "rectangle", width: "1.2 m", height: "1.2 m" }, left: "1.5 m", bottom: "0.9 m" }],
  board: { width: "900 mm", length: "1500 mm" },
};

describe("boardElevation", () => {
  it("draws every board, opening, stud and joint between studs once", () => {
    const layout = boardLayout(wall);
    const tags = tagsIn(boardElevation(layout));
    expect(of(tags, "boards", "polygon")).toHaveLength(layout.boards.length);
    expect(of(tags, "boards", "line")).toHaveLength(layout.boards.filter(({ kind }) => kind === "cut").length);
    expect(of(tags, "openings", "polygon")).toHaveLength(2);
    expect(of(tags, "openings", "line")).toHaveLength(4);
    expect(of(tags, "joints-between-studs", "polygon")).toHaveLength(layout.joints.filter(({ onStud }) => onStud === false).length);
    // Studs at 64, 80 in behind the window stand above and below it; those at 160 and 176 in over the door only.
    expect(of(tags, "studs", "line")).toHaveLength(layout.studs.length + 2);
    expect(of(tags, "screws", "circle")).toEqual([]);
    expect(of(tagsIn(boardElevation(layout, { screws: true })), "screws", "circle")).toHaveLength(layout.screws?.toNumber() ?? -1);
  });

  it("draws to scale, with the foot of the wall below", () => {
    // 20 ft at 900 across is 3.75 an inch; a board of 60 in x 36 in is 225 x 135.
    const tags = tagsIn(boardElevation(boardLayout(wall)));
    const cornersOf = (tag: Tag | undefined): readonly number[] => numbersIn(tag?.attributes.points ?? "");
    const [left = 0, foot = 0, right = 0, , , top = 0] = cornersOf(of(tags, "wall", "polygon")[0]);
    expect([right - left, foot - top]).toEqual([900, 405]);
    const whole = of(tags, "boards", "polygon").map(cornersOf).find(([x, y]) => x === left && y === foot);
    expect(whole).toEqual([left, foot, left + 225, foot, left + 225, foot - 135, left, foot - 135]);
    // The window: 54 in from the left, 36 in up, 36 in x 48 in.
    expect(cornersOf(of(tags, "openings", "polygon")[0])).toEqual([left + 202.5, foot - 135, left + 337.5, foot - 135, left + 337.5, foot - 315, left + 202.5, foot - 315]);
    expect(of(tags, "studs", "line").map(({ attributes }) => Number(attributes.x1))).toContain(left + 60);
  });

  it("writes dimensions in feet and inches, and in millimetres for a metric wall", () => {
    // Across 0, 54, 90, 144, 180, 240 in; up 0, 36, 80, 84, 108 in.
    const written = (input: Input): readonly string[] => of(tagsIn(boardElevation(boardLayout(input))), "dimensions", "text").map(({ text }) => text);
    expect(written(wall)).toEqual(["4 ft 6 in", "3 ft", "4 ft 6 in", "3 ft", "5 ft", "20 ft", "3 ft", "3 ft 8 in", "4 in", "2 ft", "9 ft"]);
    expect(written(gableFront)).toEqual(["1500", "1200", "3300", "6000", "900", "1200", "1900", "4000"]);
  });

  it("numbers the pieces, gives their sizes, and which are cut from one board", () => {
    const layout = boardLayout({ ...wall, wall: { kind: "rectangle", width: "10 ft", height: "6 ft" }, openings: [], stagger: "30 in" });
    const labels = of(tagsIn(boardElevation(layout)), "labels", "text").map(({ text }) => text);
    expect(labels).toEqual(["1", "60 × 36", "2", "60 × 36", "3", "30 × 36", "4", "60 × 36", "5", "30 × 36", "with 3"]);
  });

  it("stays on the sheet, in black and white, also under raking edges and for a wall long and low", () => {
    const low = { ...wall, wall: { kind: "rectangle", width: "200 ft", height: "2 ft" }, openings: [] } as Input;
    const high = { ...wall, wall: { kind: "rectangle", width: "2 ft", height: "40 ft" }, openings: [] } as Input;
    for (const input of [wall, gableFront, low, high]) {
      const svg = boardElevation(boardLayout(input), { title: "A title that is rather long for the sheet of a small wall, with the street, the house and the side of it".repeat(2), screws: true });
      expect(faultsIn(svg)).toEqual([]);
    }
  });

  it("has a title and a description to be read out, and escapes what it is told", () => {
    const svg = boardElevation(boardLayout(wall), { title: `North <b>wall</b> & "porch" 'x'\u0000\uD800` });
    const tags = tagsIn(svg);
    expect(tags[0]?.attributes.role).toBe("img");
    expect(tags[1]).toMatchObject({ name: "title", text: "North &lt;b&gt;wall&lt;/b&gt; &amp; &quot;porch&quot; &#39;x&#39;" });
    expect(tags[2]?.name).toBe("desc");
    // 16 studs of the spacing and the ends, and at 54, 90 and 180 in beside the openings; 144 in is 9 x 16 already.
    expect(tags[2]?.text).toContain("A wall 20 ft wide and 9 ft high with 2 openings and 19 studs.");
    expect(tags[2]?.text).toMatch(/It is covered by \d+ pieces, \d+ of them cut, from \d+ boards\./);
    expect(tags[2]?.text).toContain("of upright joints lie between studs");
    const plainWall = boardElevation(boardLayout({ ...wall, openings: [], board: { width: "4 ft", length: "8 ft" }, stagger: "0 in", wall: { kind: "rectangle", width: "8 ft", height: "4 ft" } }));
    expect(tagsIn(plainWall)[2]?.text).toBe("A wall 8 ft wide and 4 ft high with no openings and 7 studs. It is covered by 1 piece, 0 of them cut, from 1 board. All upright joints lie on studs.");
  });

  it("explains only the lines it draws", () => {
    const legend = (input: Input): string => of(tagsIn(boardElevation(boardLayout(input))), "legend", "text").map(({ text }) => text).join(" ");
    expect(legend(wall)).toContain("Crossed: an opening.");
    expect(legend(wall)).toContain("Triangle: a joint between studs.");
    const plain = legend({ ...wall, openings: [], wall: { kind: "rectangle", width: "5 ft", height: "3 ft" } });
    expect(plain).toBe("Full line: edge of a board. Dashed: a stud. In a piece: its number in the order of placing, width × height in inches.");
  });
});
