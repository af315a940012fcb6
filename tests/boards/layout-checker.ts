// An independent check of a layout on rectangular walls. It shares no code with src/boards: it takes whole sixteenths of
// an inch, cuts the wall along every edge there is, and asks of each cell which piece lies on it.
import type { Quantity } from "../../src/core/index.js";
import type { BoardLayout, PlacedBoard, WallBox } from "../../src/boards/index.js";

/** A job in whole sixteenths of an inch. */
export interface Job {
  readonly width: number;
  readonly height: number;
  readonly openings: readonly Rectangle[];
  readonly boardWidth: number;
  readonly boardLength: number;
  readonly flat: boolean;
  readonly stagger: number;
  readonly spacing: number;
  readonly firstStud: number;
  readonly edgesBacked: boolean;
  readonly reuseOffcuts: boolean;
  readonly across: number;
  readonly up: number;
  readonly screwSpacing: number;
  readonly edgeDistance: number;
}

export interface Rectangle {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** A length as whole sixteenths of an inch; NaN where it is not whole. */
export function sixteenths(length: Quantity<"length">): number {
  const number = length.to("in").times(16);
  return number.isInteger() ? number.toNumber() : Number.NaN;
}

export function rectangleOf({ left, bottom, width, height }: WallBox): Rectangle {
  return { left: sixteenths(left), bottom: sixteenths(bottom), right: sixteenths(left) + sixteenths(width), top: sixteenths(bottom) + sixteenths(height) };
}

const sortedOnce = (numbers: readonly number[]): readonly number[] => [...new Set(numbers)].sort((a, b) => a - b);
const size = ({ left, bottom, right, top }: Rectangle): number => (right - left) * (top - bottom);
const total = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);

/** The cells between all edges, each with the pieces that lie on it. */
class Cells {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  private readonly owners: number[][][];

  constructor(job: Job, pieces: readonly { readonly box: Rectangle; readonly cutouts: readonly Rectangle[] }[]) {
    const all = [{ left: 0, bottom: 0, right: job.width, top: job.height }, ...job.openings, ...pieces.flatMap(({ box, cutouts }) => [box, ...cutouts])];
    this.xs = sortedOnce(all.flatMap(({ left, right }) => [left, right]));
    this.ys = sortedOnce(all.flatMap(({ bottom, top }) => [bottom, top]));
    this.owners = this.ys.slice(1).map(() => this.xs.slice(1).map(() => []));
    pieces.forEach(({ box, cutouts }, index) => {
      this.each(box, (row, column) => {
        const inside = cutouts.some((one) => one.left <= this.x(column) && this.x(column) < one.right && one.bottom <= this.y(row) && this.y(row) < one.top);
        if (!inside) this.at(row, column).push(index);
      });
    });
  }

  x(column: number): number {
    return this.xs[column]!;
  }

  y(row: number): number {
    return this.ys[row]!;
  }

  /** The pieces on a cell; none beyond the wall. */
  at(row: number, column: number): number[] {
    return this.owners[row]?.[column] ?? [];
  }

  each(box: Rectangle, visit: (row: number, column: number) => void): void {
    for (let row = this.ys.indexOf(box.bottom); row < this.ys.indexOf(box.top); row += 1) {
      for (let column = this.xs.indexOf(box.left); column < this.xs.indexOf(box.right); column += 1) visit(row, column);
    }
  }
}

/** Everything that is wrong with a layout, in words; nothing where all is well. */
export function faultsOf(job: Job, layout: BoardLayout): readonly string[] {
  const faults: string[] = [];
  const expectSame = (what: string, actual: unknown, expected: unknown): void => {
    if (actual !== expected) faults.push(`${what}: ${String(actual)} instead of ${String(expected)}`);
  };
  const boards = layout.boards.map((board) => ({ board, box: rectangleOf(board), cutouts: board.cutouts.map(rectangleOf) }));
  const cells = new Cells(job, boards);
  const studs = studsOf(job);
  const [boardAcross, boardUp] = job.flat ? [job.boardLength, job.boardWidth] : [job.boardWidth, job.boardLength];

  // No overlap, no gap, openings clear, nothing beyond the wall.
  expectSame("left edge of the wall", cells.x(0), 0);
  expectSame("right edge of the wall", cells.xs.at(-1), job.width);
  expectSame("foot of the wall", cells.y(0), 0);
  expectSame("top of the wall", cells.ys.at(-1), job.height);
  cells.each({ left: 0, bottom: 0, right: job.width, top: job.height }, (row, column) => {
    const open = job.openings.some((one) => one.left <= cells.x(column) && cells.x(column) < one.right && one.bottom <= cells.y(row) && cells.y(row) < one.top);
    expectSame(`boards at ${String(cells.x(column))}, ${String(cells.y(row))}`, cells.at(row, column).length, open ? 0 : 1);
  });

  // Areas close.
  const area = job.width * job.height - total(job.openings.map(size));
  expectSame("area", layout.area.to("in2").times(256).toString(), String(area));
  expectSame("areas of boards", total(boards.map(({ board }) => board.area.to("in2").times(256).toNumber())), area);

  const uprightFrom = (box: Rectangle): number => Math.floor((box.left - job.across) / boardAcross);
  boards.forEach(({ board, box, cutouts }, index) => {
    const name = `board ${String(index + 1)}`;
    expectSame(`${name} number`, board.number, index + 1);
    if (box.right - box.left > boardAcross || box.top - box.bottom > boardUp) faults.push(`${name} is larger than a board`);
    expectSame(`${name} kind`, board.kind, size(box) === boardAcross * boardUp && cutouts.length === 0 ? "whole" : "cut");
    expectSame(`${name} area`, board.area.to("in2").times(256).toNumber(), size(box) - total(cutouts.map(size)));
    // Every upright edge is on a stud, or flagged.
    expectSame(`${name} left on stud`, board.leftOnStud, studs.has(box.left));
    expectSame(`${name} right on stud`, board.rightOnStud, studs.has(box.right));
    for (const cutout of cutouts) {
      for (const edge of [cutout.left, cutout.right]) if (edge > box.left && edge < box.right && !studs.has(edge)) faults.push(`${name} has an edge at ${String(edge)} that is on no stud`);
    }
    // Boards lie where the pattern puts them: one course, and between two ends of that course.
    const course = job.flat ? Math.floor((box.bottom - job.up) / boardUp) : uprightFrom(box);
    const first = job.flat ? -Math.ceil(job.up / boardUp) : -Math.ceil(job.across / boardAcross);
    const shift = Math.abs(course - first) % 2 === 1 ? job.stagger : 0;
    const [nearAcross, nearUp] = job.flat ? [job.across + shift, job.up] : [job.across, job.up + shift];
    const cell = (at: number, near: number, step: number): number => Math.floor((at - near) / step);
    if (cell(box.left, nearAcross, boardAcross) !== cell(box.right - 1, nearAcross, boardAcross)) faults.push(`${name} reaches over a joint across`);
    if (cell(box.bottom, nearUp, boardUp) !== cell(box.top - 1, nearUp, boardUp)) faults.push(`${name} reaches over a joint up`);
  });

  // Joints: where two cells of different boards lie side by side.
  const found = { level: 0, upright: 0, offStuds: 0 };
  const places = new Set<string>();
  cells.each({ left: 0, bottom: 0, right: job.width, top: job.height }, (row, column) => {
    const [here, right, above] = [cells.at(row, column)[0], cells.at(row, column + 1)[0], cells.at(row + 1, column)[0]];
    if (here === undefined) return;
    if (right !== undefined && right !== here) {
      const length = cells.y(row + 1) - cells.y(row);
      found.upright += length;
      if (!studs.has(cells.x(column + 1))) found.offStuds += length;
    }
    if (above !== undefined && above !== here) found.level += cells.x(column + 1) - cells.x(column);
    const course = job.flat ? Math.floor((cells.y(row) - job.up) / boardUp) : Math.floor((cells.x(column) - job.across) / boardAcross);
    const first = job.flat ? -Math.ceil(job.up / boardUp) : -Math.ceil(job.across / boardAcross);
    const shift = Math.abs(course - first) % 2 === 1 ? job.stagger : 0;
    const place = job.flat ? Math.floor((cells.x(column) - job.across - shift) / boardAcross) : Math.floor((cells.y(row) - job.up - shift) / boardUp);
    places.add(`${String(course)} ${String(place)}`);
  });
  expectSame("level joints", sixteenths(layout.levelJoints), found.level);
  expectSame("upright joints", sixteenths(layout.uprightJoints), found.upright);
  expectSame("joint length", sixteenths(layout.jointLength), found.level + found.upright);
  expectSame("joints off studs", sixteenths(layout.jointsOffStuds), found.offStuds);
  for (const joint of layout.joints) if (joint.runs === "upright") expectSame("joint on stud", joint.onStud, studs.has(sixteenths(joint.left)));
  expectSame("joints listed", total(layout.joints.map(({ length }) => sixteenths(length))), found.level + found.upright);
  expectSame("studs", layout.studs.map(({ across }) => sixteenths(across)).join(), [...studs].sort((a, b) => a - b).join());
  expectSame("narrowest", sixteenths(layout.narrowest), Math.min(...boards.map(({ box }) => Math.min(box.right - box.left, box.top - box.bottom))));

  faults.push(...sawingFaults(job, layout, places.size, boardAcross, boardUp), ...screwFaults(job, layout, cells, studs));
  return faults;
}

function studsOf({ width, spacing, firstStud, openings }: Job): ReadonlySet<number> {
  const studs = new Set([0, width, ...openings.flatMap(({ left, right }) => [left, right])]);
  for (let at = firstStud; at <= width; at += spacing) studs.add(at);
  return studs;
}

/** Boards are counted, and no two pieces or offcuts of one board overlap on it; together they are the whole board. */
function sawingFaults(job: Job, layout: BoardLayout, places: number, across: number, up: number): readonly string[] {
  const faults: string[] = [];
  const used = layout.boardsUsed.toNumber();
  const least = Math.ceil((job.width * job.height - total(job.openings.map(size))) / (across * up));
  if (layout.boardsByArea.toNumber() !== least) faults.push(`boards by area: ${layout.boardsByArea.toString()} instead of ${String(least)}`);
  if (job.reuseOffcuts ? used > places || used < least : used !== places) faults.push(`boards used: ${String(used)}, with ${String(places)} places and ${String(least)} by area`);
  const fetched = new Set<number>();
  for (const { board, fromOffcut } of layout.boards) {
    if (fromOffcut && !fetched.has(board)) faults.push(`board ${String(board)} has an offcut before it is fetched`);
    if (fromOffcut && !job.reuseOffcuts) faults.push("an offcut is used, though none is to be");
    fetched.add(board);
  }
  if (fetched.size !== used || Math.max(...fetched) !== used) faults.push(`boards are numbered to ${String(Math.max(...fetched))}, and ${String(used)} are used`);
  const parts = new Map<number, Rectangle[]>();
  const add = (board: number, part: Rectangle): void => void parts.set(board, [...(parts.get(board) ?? []), part]);
  for (const board of layout.boards) for (const part of solidParts(board)) add(board.board, part);
  for (const offcut of layout.offcuts) add(offcut.board, rectangleOf(offcut));
  for (const [board, list] of parts) {
    if (list.some(({ left, bottom, right, top }) => !(left >= 0 && bottom >= 0 && right <= across && top <= up))) faults.push(`a part lies beyond board ${String(board)}`);
    if (list.some((one, index) => list.slice(index + 1).some((other) => one.left < other.right && other.left < one.right && one.bottom < other.top && other.bottom < one.top))) faults.push(`parts of board ${String(board)} overlap`);
    if (total(list.map(size)) !== across * up) faults.push(`the parts of board ${String(board)} are not the whole board`);
  }
  return faults;
}

/** A piece as it lies on its board, cut into rectangles along the edges of its cutouts. */
function solidParts(piece: PlacedBoard): readonly Rectangle[] {
  const box = rectangleOf(piece);
  const cutouts = piece.cutouts.map(rectangleOf);
  const [byX, byY] = [sixteenths(piece.onBoard.across) - box.left, sixteenths(piece.onBoard.up) - box.bottom];
  const xs = sortedOnce([box.left, box.right, ...cutouts.flatMap(({ left, right }) => [left, right])]);
  const ys = sortedOnce([box.bottom, box.top, ...cutouts.flatMap(({ bottom, top }) => [bottom, top])]);
  return xs.slice(1).flatMap((right, column) =>
    ys.slice(1).flatMap((top, row): Rectangle[] => {
      const [left, bottom] = [xs[column]!, ys[row]!];
      const out = cutouts.some((one) => one.left <= left && left < one.right && one.bottom <= bottom && bottom < one.top);
      return out ? [] : [{ left: left + byX, bottom: bottom + byY, right: right + byX, top: top + byY }];
    }),
  );
}

/** Screws counted stud by stud over the cells: ceil((length - 2 edge distances) / spacing) + 1 a line. */
function screwFaults(job: Job, layout: BoardLayout, cells: Cells, studs: ReadonlySet<number>): readonly string[] {
  const faults: string[] = [];
  let all = 0;
  layout.boards.forEach((board, index) => {
    const box = rectangleOf(board);
    const lines = sortedOnce([...studs, ...(job.edgesBacked ? [box.left, box.right] : [])].filter((at) => at >= box.left && at <= box.right));
    let screws = 0;
    for (const at of lines) {
      let run = 0;
      const end = (): void => {
        if (run > 2 * job.edgeDistance && box.right - box.left > 2 * job.edgeDistance) screws += Math.ceil((run - 2 * job.edgeDistance) / job.screwSpacing) + 1;
        run = 0;
      };
      for (let row = 0; row < cells.ys.length - 1; row += 1) {
        // A stud between two edges of the grid lies within one column; one on an edge has a column on either side.
        const column = cells.xs.filter((x) => x <= at).length - 1;
        const there = [column, ...(cells.x(column) === at ? [column - 1] : [])].some((one) => cells.at(row, one).includes(index));
        if (there) run += cells.y(row + 1) - cells.y(row);
        else end();
      }
      end();
    }
    if (board.screws !== screws) faults.push(`board ${String(index + 1)} has ${String(board.screws)} screws instead of ${String(screws)}`);
    all += screws;
  });
  if (layout.screws?.toNumber() !== all) faults.push(`screws: ${String(layout.screws)} instead of ${String(all)}`);
  return faults;
}
