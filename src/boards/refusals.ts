import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

/** What is laid out in numbers that have an end. */
type LaidOut = "boards" | "openings" | "studs";

/** Words why the functions for boards refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("boards", {
  layersFromOneTo: ({ most }: { most: number }) => sentence`give 1 to ${most} layers`,
  lengthsFromOneTo: ({ most }: { most: number }) => sentence`give 1 to ${most} lengths`,
  stockFromOneTo: ({ most }: { most: number }) => sentence`give 1 to ${most} lengths that can be bought`,
  giveWhole: () => "give a whole number",
  longerThanStock: () => "it is longer than every stock length; it must be joined from pieces",
  mostCut: ({ most }: { most: number }) => sentence`at most ${most} are cut at once`,
  mostLaidOut: ({ most, of }: { most: number; of: LaidOut }) => sentence`at most ${most} ${of} are laid out at once; check the sizes, or lay out a part of the wall`,
  widthIsShortSide: ({ length }: { length: Quantity }) => sentence`width is the short side of the board, and its length is ${length}; how it lies is told by orientation`,
  shiftLongerThanBoard: () => "the shift from one course to the next cannot be longer than the board",
  firstStudTooFar: () => "the first stud cannot lie further from the end of the wall than the spacing",
  firstBoardTooFarAcross: () => "the first whole board cannot begin more than a board from the end of the wall",
  firstBoardTooFarUp: () => "the first whole board cannot begin more than a board from the foot of the wall",
  widthByLength: ({ width, length }: { width: Quantity; length: Quantity }) => sentence`${width} by ${length}`,
  boardLargerThanWall: () => "the board is larger than the wall both ways; give the wall whole, or the board as it is cut",
  aboutBoards: ({ count }: { count: number }) => sentence`about ${count} boards`,
  openingBeyondWall: () => "the opening reaches beyond the wall",
  openingOverlaps: ({ other }: { other: number }) => sentence`the opening overlaps openings[${other}]`,
  noWallLeft: () => "the openings leave no wall to be boarded",
});
