import { describe, expect, it } from "vitest";
import { boardLayout } from "../../src/boards/board-layout.js";
import { drawFrom } from "../support/random.js";
import { faultsOf, type Job, type Rectangle } from "./layout-checker.js";

const inch = 16;

/** A wall of some feet with up to five openings; half of the sizes on whole inches, so that edges often meet. */
function randomJob(seed: number): Job {
  const { whole: pick } = drawFrom(seed);
  const grain = pick(0, 1) === 0 ? inch : 1;
  const length = (least: number, most: number): number => pick(least / grain, most / grain) * grain;
  const [width, height] = [length(24 * inch, 400 * inch), length(20 * inch, 200 * inch)];
  const openings: Rectangle[] = [];
  for (let tries = pick(0, 8); tries > 0 && openings.length < 5; tries -= 1) {
    const [left, bottom] = [length(0, width - 16), length(0, height - 16)];
    const one = { left, bottom, right: Math.min(width, left + length(inch, 96 * inch)), top: Math.min(height, bottom + length(inch, 84 * inch)) };
    const clear = openings.every((other) => one.left >= other.right || other.left >= one.right || one.bottom >= other.top || other.bottom >= one.top);
    if (clear && one.right > left && one.top > bottom) openings.push(one);
  }
  const [boardWidth, boardLength] = [[36, 60], [48, 96], [32, 48], [24, 96], [48, 48], [35, 61]][pick(0, 5)]!.map((size) => size * inch) as [number, number];
  const flat = pick(0, 1) === 0;
  const spacing = [16, 24, 12, 19][pick(0, 3)]! * inch;
  return {
    // A board larger than its wall both ways is refused, so the wall is at least as wide.
    width: Math.max(width, flat ? boardLength : boardWidth), height, openings, boardWidth, boardLength, flat, spacing,
    stagger: [0, boardLength / 2, spacing, pick(0, boardLength)][pick(0, 3)]!,
    firstStud: pick(0, 1) === 0 ? spacing : pick(0, spacing),
    edgesBacked: pick(0, 1) === 0,
    reuseOffcuts: pick(0, 1) === 0,
    across: pick(0, 1) === 0 ? 0 : pick(0, flat ? boardLength : boardWidth),
    up: pick(0, 1) === 0 ? 0 : pick(0, flat ? boardWidth : boardLength),
    screwSpacing: [6, 7, 8][pick(0, 2)]! * inch,
    edgeDistance: pick(0, 1) === 0 ? 6 : 8,
  };
}

const text = (length: number): string => `${String(length)}/16 in`;

function layoutOf(job: Job): ReturnType<typeof boardLayout.try> {
  return boardLayout.try({
    wall: { kind: "rectangle", width: text(job.width), height: text(job.height) },
    openings: job.openings.map(({ left, bottom, right, top }) => ({ shape: { kind: "rectangle", width: text(right - left), height: text(top - bottom) }, left: text(left), bottom: text(bottom) })),
    board: { width: text(job.boardWidth), length: text(job.boardLength) },
    orientation: job.flat ? "flat" : "upright",
    stagger: text(job.stagger),
    studs: { spacing: text(job.spacing), start: text(job.firstStud) },
    edgesBacked: job.edgesBacked,
    reuseOffcuts: job.reuseOffcuts,
    start: { across: text(job.across), up: text(job.up) },
    screws: { spacing: text(job.screwSpacing), edgeDistance: text(job.edgeDistance) },
  });
}

describe("boardLayout on random walls", () => {
  it("leaves no gap and no overlap, closes its areas, and flags every edge that is on no stud, on 1,000 walls", () => {
    const seen = { cut: 0, fromOffcut: 0, offStud: 0, cutouts: 0, openings: 0 };
    for (let seed = 1; seed <= 1000; seed += 1) {
      const job = randomJob(seed);
      const tried = layoutOf(job);
      if (!tried.ok) throw new Error(`wall ${String(seed)}: ${tried.problems.map(({ message }) => message).join("; ")}`);
      const layout = tried.solution.answers;
      expect(faultsOf(job, layout), `wall ${String(seed)}`).toEqual([]);
      seen.openings += job.openings.length;
      for (const { kind, fromOffcut, leftOnStud, cutouts } of layout.boards) {
        seen.cut += kind === "cut" ? 1 : 0;
        seen.fromOffcut += fromOffcut ? 1 : 0;
        seen.offStud += leftOnStud ? 0 : 1;
        seen.cutouts += cutouts.length;
      }
    }
    // The walls are not all of the easy kind.
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(500);
  });
});
