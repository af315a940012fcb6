import { exact } from "../core/amount.js";
import type { Work } from "../core/composed.js";
import type { Fraction } from "../core/fraction.js";
import type { Quantity } from "../core/quantity.js";
import { boardScrews } from "../fasteners/board-screws.js";
import { exactLength, type Shown } from "../shapes/exact-length.js";
import { keyOf, widthOf } from "../shapes/face.js";
import type { StraightLine } from "./joint-lines.js";
import type { ReadLayout } from "./layout-input.js";
import type { Piece } from "./pieces.js";
import { screwRuns } from "./screw-lines.js";

/** Screws over each other in a board; beside an opening that reaches the stud they stand the edge distance in, as a line of their own. */
export interface ScrewLine {
  /** From the left end of the wall. */
  readonly across: Quantity<"length">;
  /** From the foot of the wall to the first screw. */
  readonly bottom: Quantity<"length">;
  readonly spacing: Quantity<"length">;
  readonly screws: number;
}

/** The lines of screws of a piece, and how many more there would be with room for a screw at the edge distance all round. */
export interface PieceScrews {
  readonly lines: readonly ScrewLine[];
  readonly withoutRoom: number;
}

/** Gives the screws on the lines of a piece; each length of line is worked out once, and is a part of the solution. */
export function screwCounter(given: ReadLayout, asked: NonNullable<ReadLayout["screws"]>, show: Shown, work: Work): (piece: Piece, lines: readonly StraightLine[]) => PieceScrews {
  const { board, studs, orientation } = given;
  const [acrossStuds, alongStuds] = orientation === "flat" ? [board.length, board.width] : [board.width, board.length];
  const common = { acrossStuds, studSpacing: studs.spacing, screwSpacing: asked.spacing };
  const whole = work.part(boardScrews, { ...common, alongStuds, ...(asked.edgeDistance === undefined ? {} : { edgeDistance: asked.edgeDistance }) }, ["screws"]);
  const edgeDistance = whole.given.find(({ name }) => name === "edgeDistance")?.value as Quantity<"length">;
  const edge = exactLength(edgeDistance);
  const bothEdges = edge.mul(exact(2n));
  const worked = new Map([[keyOf(exactLength(alongStuds)), whole.answers]]);
  const answersFor = (length: Fraction): typeof whole.answers => {
    const known = worked.get(keyOf(length));
    if (known !== undefined) return known;
    const { answers } = work.part(boardScrews, { ...common, alongStuds: show.length(length), edgeDistance }, ["screws"]);
    worked.set(keyOf(length), answers);
    return answers;
  };
  return (piece, lines) => {
    const roomy = lines.filter(({ from, to }) => widthOf(piece.box).compare(bothEdges) > 0 && to.sub(from).compare(bothEdges) > 0);
    const screwed = roomy.flatMap((line): readonly ScrewLine[] => {
      const { screwsPerLine, actualSpacing } = answersFor(line.to.sub(line.from));
      const runs = screwRuns(piece, line, edge, exactLength(actualSpacing), screwsPerLine.toNumber());
      return runs.map(({ across, bottom, screws }) => ({ across: show.length(across), bottom: show.length(bottom), spacing: actualSpacing, screws }));
    });
    return { lines: screwed, withoutRoom: lines.length - roomy.length };
  };
}
