import { describe, expect, it } from "vitest";
import { boardLayout } from "../../src/boards/board-layout.js";
import { drawFrom } from "../support/random.js";

// Random gable fronts, in inches: a wall 0 to width with eaves at two heights and a peak between. Points are thrown at the
// wall; the checker asks in plain numbers which boards they hit. No code of src/boards is used for that.

type Spot = readonly [number, number];

/** Whether a spot lies within corners that go round anticlockwise. */
function within(corners: readonly Spot[], [x, y]: Spot): boolean {
  return corners.every(([fromX, fromY], index) => {
    const [toX, toY] = corners[(index + 1) % corners.length]!;
    return (toX - fromX) * (y - fromY) - (toY - fromY) * (x - fromX) >= 0;
  });
}

function frontOf(seed: number, mostWindows: number): { readonly corners: readonly Spot[]; readonly windows: readonly (readonly [number, number, number, number])[]; readonly layout: ReturnType<typeof boardLayout> } {
  const { whole } = drawFrom(seed);
  const width = whole(60, 400);
  const [left, right] = [whole(0, 1) * whole(20, 150), whole(20, 150)];
  const [peakAt, peak] = [whole(1, width - 1), Math.max(left, right) + whole(1, 90)];
  const corners = ([[0, 0], [width, 0], [width, right], [peakAt, peak], [0, left]] as const).filter(([x, y]) => x > 0 || y > 0 || left > 0);
  const outline: readonly Spot[] = left > 0 ? [[0, 0], ...corners.filter(([x, y]) => x > 0 || y > 0)] : [[0, 0], ...corners];
  const windows: (readonly [number, number, number, number])[] = [];
  for (let tries = 0; tries < 3 * mostWindows; tries += 1) {
    const [x, y] = [whole(0, width - 10), whole(0, 100)];
    const [w, h] = [whole(5, 60), whole(5, 60)];
    const inside = ([[x, y], [x + w, y], [x + w, y + h], [x, y + h]] as const).every((spot) => within(outline, spot));
    if (windows.length < mostWindows && inside && windows.every(([a, b, c, d]) => x >= a + c || a >= x + w || y >= b + d || b >= y + h)) windows.push([x, y, w, h]);
  }
  const inches = (number: number): string => `${String(number)} in`;
  const layout = boardLayout({
    wall: { kind: "polygon", points: outline.map(([x, y]) => ({ x: inches(x), y: inches(y) })) },
    openings: windows.map(([x, y, w, h]) => ({ shape: { kind: "rectangle", width: inches(w), height: inches(h) }, left: inches(x), bottom: inches(y) })),
    board: { width: "36 in", length: "60 in" },
    orientation: whole(0, 1) === 0 ? "flat" : "upright",
    stagger: inches(whole(0, 60)),
    studs: { spacing: "16 in", start: "16 in" },
    edgesBacked: true,
    reuseOffcuts: whole(0, 1) === 0,
    screws: { spacing: "8 in" },
  });
  return { corners: outline, windows, layout };
}

/** Area within corners, by the shoelace formula. */
function areaOf(corners: readonly Spot[]): number {
  return corners.reduce((sum, [x, y], index) => sum + (x * corners[(index + 1) % corners.length]![1] - corners[(index + 1) % corners.length]![0] * y) / 2, 0);
}

describe("boardLayout on random gable fronts", () => {
  it("covers every spot of the wall once, no opening and nothing beyond, and closes its areas, on 200 fronts", () => {
    let raked = 0;
    for (let seed = 1; seed <= 200; seed += 1) {
      const { corners, windows, layout } = frontOf(seed, 3);
      const { whole } = drawFrom(seed + 1000);
      // Spots lie on odd hundredths and thirds of an inch, so that none lies on an edge of whole inches.
      const between = (most: number): number => whole(-500, 100 * most + 500) / 100 + 1 / 300;
      const pieces = layout.boards.map((board) => ({
        corners: board.corners.map(({ across, up }): Spot => [across.toNumber("in"), up.toNumber("in")]),
        cutouts: board.cutouts.map((cutout) => [cutout.left, cutout.bottom, cutout.width, cutout.height].map((length) => length.toNumber("in")) as [number, number, number, number]),
      }));
      raked += pieces.filter((piece) => piece.corners.length !== 4).length;
      const inBox = ([left, bottom, width, height]: readonly [number, number, number, number], [x, y]: Spot): boolean => x > left && x < left + width && y > bottom && y < bottom + height;
      for (let shot = 0; shot < 150; shot += 1) {
        const spot: Spot = [between(Math.max(...corners.map(([x]) => x))), between(Math.max(...corners.map(([, y]) => y)))];
        const hits = pieces.filter((piece) => within(piece.corners, spot) && !piece.cutouts.some((cutout) => inBox(cutout, spot))).length;
        const board = within(corners, spot) && !windows.some((window) => inBox(window, spot));
        expect(hits, `front ${String(seed)} at ${spot.join()}`).toBe(board ? 1 : 0);
      }
      const area = areaOf(corners) - windows.reduce((sum, [, , w, h]) => sum + w * h, 0);
      expect(layout.area.toNumber("in2"), `front ${String(seed)}`).toBeCloseTo(area, 6);
      expect(layout.boards.reduce((sum, board) => sum + board.area.toNumber("in2"), 0)).toBeCloseTo(area, 6);
    }
    expect(raked).toBeGreaterThan(200);
  });

  it("has two edges to every joint, and one to the outline, where there are no openings, on 200 fronts", () => {
    for (let seed = 1; seed <= 200; seed += 1) {
      const { corners, layout } = frontOf(seed, 0);
      const edges = (list: readonly Spot[], upright: boolean): number =>
        list.reduce((sum, [x, y], index) => {
          const [toX, toY] = list[(index + 1) % list.length]!;
          return sum + (upright ? (Math.abs(toX - x) < 1e-9 ? Math.abs(toY - y) : 0) : Math.abs(toY - y) < 1e-9 ? Math.abs(toX - x) : 0);
        }, 0);
      const pieces = layout.boards.map((board) => board.corners.map(({ across, up }): Spot => [across.toNumber("in"), up.toNumber("in")]));
      const total = (upright: boolean): number => pieces.reduce((sum, piece) => sum + edges(piece, upright), 0);
      expect(2 * layout.uprightJoints.toNumber("in") + edges(corners, true), `front ${String(seed)}`).toBeCloseTo(total(true), 6);
      expect(2 * layout.levelJoints.toNumber("in") + edges(corners, false), `front ${String(seed)}`).toBeCloseTo(total(false), 6);
    }
  });
});
