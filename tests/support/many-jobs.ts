// Three jobs for the evaluator of many rows: a film, a coursed face, a wall of 25 inputs. Each as a calculation, as the
// same arithmetic in plain numbers of the units given, and with inputs as people type them.
import { calculation, type Definition } from "../../src/core/index.js";
import { arithmetic, geometry } from "../../src/data/basis.js";
import type { Draw } from "./random.js";

/** Every number under its input's name, in the unit of {@link ManyJob.units}. */
export type PlainRow = Readonly<Record<string, number>>;

export interface ManyJob {
  readonly name: string;
  readonly run: typeof film;
  readonly units: Readonly<Record<string, string>>;
  readonly draw: (draw: Draw) => PlainRow;
  readonly plain: (row: never) => Readonly<Record<string, number>>;
  readonly counts: readonly string[];
}

const basis = arithmetic;

export const film = calculation({
  id: "demo.film",
  title: "Pails for a film",
  given: {
    area: { is: "area", unit: "ft2", symbol: "A", says: "area", above: 0 },
    wet: { is: "length", unit: "mil", symbol: "t", says: "wet film", above: 0 },
    coats: { is: "count", symbol: "n", says: "coats", atLeast: 1 },
    solids: { is: "ratio", unit: "%", symbol: "s", says: "solids by volume", above: 0, atMost: 1 },
    loss: { is: "ratio", unit: "%", symbol: "l", says: "share that is lost", atLeast: 0, below: 1 },
  },
  steps: {
    dry: { is: "length", unit: "mil", symbol: "d", formula: "wet * coats * solids", basis },
    coating: { is: "volume", unit: "gal", symbol: "V", formula: "area * wet * coats / (1 - loss)", basis },
    pails: { is: "count", symbol: "N", formula: "ceil(coating / pail)", basis },
  },
  constants: { pail: { is: "volume", unit: "gal", value: "5 gal", symbol: "p", says: "one pail", basis } },
});

interface FilmRow {
  readonly area: number;
  readonly wet: number;
  readonly coats: number;
  readonly solids: number;
  readonly loss: number;
}

export const plainFilm = ({ area, wet, coats, solids, loss }: FilmRow): { readonly dry: number; readonly coating: number; readonly pails: number } => {
  const dry = (wet * coats * solids) / 100;
  const coating = (((area * wet * coats) / 12000) * 1728) / 231 / (1 - loss / 100);
  return { dry, coating, pails: Math.ceil(coating / 5) };
};

const drawFilm = (draw: Draw): FilmRow => ({ area: draw.one([draw.whole(1, 60) * 385, draw.whole(1, 8000) / 2]), wet: draw.whole(2, 60), coats: draw.whole(1, 4), solids: draw.whole(6, 20) * 5, loss: draw.whole(0, 10) * 5 });

export const joints = calculation({
  id: "demo.joints",
  title: "Bags for the joints of a coursed face",
  given: {
    area: { is: "area", unit: "ft2", symbol: "A", says: "area", above: 0 },
    unitLength: { is: "length", unit: "in", symbol: "L", says: "length of a unit", above: 0 },
    unitHeight: { is: "length", unit: "in", symbol: "H", says: "height of a unit", above: 0 },
    joint: { is: "length", unit: "in", symbol: "t", says: "width of the joints", atLeast: 0 },
    depth: { is: "length", unit: "in", symbol: "d", says: "depth of the joints", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "waste", atLeast: 0 },
    bagYield: { is: "volume", unit: "ft3", symbol: "y", says: "yield of a bag", above: 0 },
  },
  steps: {
    module: { is: "area", unit: "in2", symbol: "M", formula: "(unitLength + joint) * (unitHeight + joint)", basis: geometry },
    perArea: { is: "length", unit: "ft", symbol: "v", formula: "(module - unitLength * unitHeight) / module * depth", basis: geometry },
    volume: { is: "volume", unit: "ft3", symbol: "V", formula: "area * perArea", basis: geometry },
    gross: { is: "volume", unit: "ft3", symbol: "G", formula: "volume * (1 + waste)", basis },
    bags: { is: "count", symbol: "N", formula: "ceil(gross / bagYield)", basis },
  },
});

interface JointsRow {
  readonly area: number;
  readonly unitLength: number;
  readonly unitHeight: number;
  readonly joint: number;
  readonly depth: number;
  readonly waste: number;
  readonly bagYield: number;
}

export const plainJoints = ({ area, unitLength, unitHeight, joint, depth, waste, bagYield }: JointsRow): object => {
  const module = (unitLength + joint) * (unitHeight + joint);
  const perArea = (((module - unitLength * unitHeight) / module) * depth) / 12;
  const volume = area * perArea;
  const gross = volume * (1 + waste / 100);
  return { module, perArea, volume, gross, bags: Math.ceil(gross / bagYield) };
};

const drawJoints = (draw: Draw): JointsRow => {
  const round = draw.one([true, false, false]);
  return {
    area: round ? draw.whole(1, 90) * 45 : draw.whole(1, 6000) / 2,
    unitLength: round ? 12 : draw.whole(64, 380) / 16,
    unitHeight: round ? 4 : draw.whole(29, 128) / 16,
    joint: round ? 0.5 : draw.whole(3, 12) / 16,
    depth: round ? draw.one([0.5, 0.75, 1]) : draw.whole(4, 24) / 16,
    waste: draw.whole(0, 6) * 5,
    bagYield: draw.whole(3, 10) / 10,
  };
};

export const wall = calculation({
  id: "demo.wall",
  title: "Order list of a wall",
  given: {
    length: { is: "length", unit: "ft", symbol: "L", says: "length of the wall", above: 0 },
    height: { is: "length", unit: "ft", symbol: "H", says: "height of the wall", above: 0 },
    doorWidth: { is: "length", unit: "ft", symbol: "w_d", says: "width of a door", above: 0 },
    doorHeight: { is: "length", unit: "ft", symbol: "h_d", says: "height of a door", above: 0 },
    doors: { is: "count", symbol: "n_d", says: "doors", atLeast: 0 },
    windowWidth: { is: "length", unit: "ft", symbol: "w_w", says: "width of a window", above: 0 },
    windowHeight: { is: "length", unit: "ft", symbol: "h_w", says: "height of a window", above: 0 },
    windows: { is: "count", symbol: "n_w", says: "windows", atLeast: 0 },
    ventWidth: { is: "length", unit: "in", symbol: "w_v", says: "width of a vent", above: 0 },
    ventHeight: { is: "length", unit: "in", symbol: "h_v", says: "height of a vent", above: 0 },
    vents: { is: "count", symbol: "n_v", says: "vents", atLeast: 0 },
    corners: { is: "count", symbol: "n_c", says: "outside corners", atLeast: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "waste", atLeast: 0 },
    loss: { is: "ratio", unit: "%", symbol: "l", says: "share of coating that is lost", atLeast: 0, below: 1 },
    film: { is: "length", unit: "mil", symbol: "t", says: "wet film", above: 0 },
    coats: { is: "count", symbol: "n", says: "coats", atLeast: 1 },
    unitLength: { is: "length", unit: "in", symbol: "L_u", says: "length of a unit", above: 0 },
    unitHeight: { is: "length", unit: "in", symbol: "H_u", says: "height of a unit", above: 0 },
    joint: { is: "length", unit: "in", symbol: "j", says: "width of the joints", atLeast: 0 },
    bed: { is: "length", unit: "in", symbol: "b", says: "thickness of the bed", above: 0 },
    bedYield: { is: "volume", unit: "ft3", symbol: "y_b", says: "yield of a bag of bed mortar", above: 0 },
    jointYield: { is: "volume", unit: "ft3", symbol: "y_j", says: "yield of a bag of pointing mortar", above: 0 },
    screwSpacing: { is: "length", unit: "in", symbol: "s", says: "spacing of screws", above: 0 },
    studSpacing: { is: "length", unit: "in", symbol: "S", says: "spacing of studs", above: 0 },
    unitWeight: { is: "arealMass", unit: "lb/ft2", symbol: "g", says: "weight of the cladding", above: 0 },
  },
  constants: {
    boardWidth: { is: "length", unit: "ft", value: "3 ft", symbol: "B", says: "width of a board", basis },
    boardHeight: { is: "length", unit: "ft", value: "5 ft", symbol: "D", says: "height of a board", basis },
    roll: { is: "length", unit: "ft", value: "150 ft", symbol: "r", says: "a roll of tape", basis },
    pail: { is: "volume", unit: "gal", value: "5 gal", symbol: "p", says: "a pail", basis },
    piece: { is: "length", unit: "ft", value: "10 ft", symbol: "q", says: "a piece of flashing or screed", basis },
    jointDepth: { is: "length", unit: "in", value: "0.5 in", symbol: "e", says: "depth of the joints", basis },
    panel: { is: "length", unit: "ft", value: "18 ft", symbol: "P", says: "longest panel", basis },
    bagWater: { is: "volume", unit: "qt", value: "5 qt", symbol: "W", says: "water to a bag", basis },
  },
  steps: {
    gross: { is: "area", unit: "ft2", symbol: "a", formula: "length * height", basis: geometry },
    openings: { is: "area", unit: "ft2", symbol: "o", formula: "doorWidth * doorHeight * doors + windowWidth * windowHeight * windows + ventWidth * ventHeight * vents", basis: geometry },
    net: { is: "area", unit: "ft2", symbol: "A", formula: "gross - openings", basis: geometry, above: 0 },
    boards: { is: "count", symbol: "n_1", formula: "ceil(net * (1 + waste) / (boardWidth * boardHeight))", basis },
    rowScrews: { is: "count", symbol: "n_2", formula: "ceil(boardWidth / screwSpacing) + 1", basis },
    screwLines: { is: "count", symbol: "n_3", formula: "ceil(boardHeight / studSpacing) + 1", basis },
    screws: { is: "count", symbol: "n_4", formula: "boards * rowScrews * screwLines", basis },
    boxes: { is: "count", symbol: "n_5", formula: "ceil(screws * (1 + waste) / 250)", basis },
    rolls: { is: "count", symbol: "n_6", formula: "ceil(boards * (boardWidth + boardHeight) / roll)", basis },
    coating: { is: "volume", unit: "gal", symbol: "V", formula: "net * film * coats / (1 - loss)", basis },
    pails: { is: "count", symbol: "n_7", formula: "ceil(coating / pail)", basis },
    jambs: { is: "length", unit: "ft", symbol: "J", formula: "doors * (2 * doorHeight + doorWidth) + windows * 2 * (windowHeight + windowWidth) + vents * 2 * (ventHeight + ventWidth)", basis: geometry },
    flashing: { is: "count", symbol: "n_8", formula: "ceil(jambs * (1 + waste) / piece)", basis },
    screed: { is: "count", symbol: "n_9", formula: "ceil(length * (1 + waste) / piece)", basis },
    bedVolume: { is: "volume", unit: "ft3", symbol: "V_b", formula: "net * bed * (1 + waste)", basis },
    bedBags: { is: "count", symbol: "n_10", formula: "ceil(bedVolume / bedYield)", basis },
    module: { is: "area", unit: "in2", symbol: "M", formula: "(unitLength + joint) * (unitHeight + joint)", basis: geometry },
    pointing: { is: "volume", unit: "ft3", symbol: "V_j", formula: "net * (1 - unitLength * unitHeight / module) * jointDepth * (1 + waste)", basis },
    pointingBags: { is: "count", symbol: "n_11", formula: "ceil(pointing / jointYield)", basis },
    cornerUnits: { is: "count", symbol: "n_12", formula: "ceil(corners * height / (unitHeight + joint))", basis },
    flatUnits: { is: "count", symbol: "n_13", formula: "ceil(net * (1 + waste) / module)", basis },
    packs: { is: "count", symbol: "n_14", formula: "ceil(flatUnits / 40)", basis },
    water: { is: "volume", unit: "gal", symbol: "w_b", formula: "(bedBags + pointingBags) * bagWater", basis },
    batches: { is: "count", symbol: "n_15", formula: "ceil(bedBags / 4)", basis },
    panels: { is: "count", symbol: "n_16", formula: "ceil(length / panel)", basis },
    courses: { is: "count", symbol: "n_17", formula: "ceil(height / (unitHeight + joint))", basis },
    weight: { is: "mass", unit: "lb", symbol: "m", formula: "net * unitWeight", basis },
  },
});

interface WallRow {
  readonly length: number;
  readonly height: number;
  readonly doorWidth: number;
  readonly doorHeight: number;
  readonly doors: number;
  readonly windowWidth: number;
  readonly windowHeight: number;
  readonly windows: number;
  readonly ventWidth: number;
  readonly ventHeight: number;
  readonly vents: number;
  readonly corners: number;
  readonly waste: number;
  readonly loss: number;
  readonly film: number;
  readonly coats: number;
  readonly unitLength: number;
  readonly unitHeight: number;
  readonly joint: number;
  readonly bed: number;
  readonly bedYield: number;
  readonly jointYield: number;
  readonly screwSpacing: number;
  readonly studSpacing: number;
  readonly unitWeight: number;
}

export const plainWall = (row: WallRow): object => {
  const { ceil } = Math;
  const { length, height, waste, doors, windows, vents, doorHeight, doorWidth, windowHeight, windowWidth, ventHeight, ventWidth, joint, unitLength, unitHeight } = row;
  const allowance = 1 + waste / 100;
  const gross = length * height;
  const openings = doorWidth * doorHeight * doors + windowWidth * windowHeight * windows + (ventWidth * ventHeight * vents) / 144;
  const net = gross - openings;
  const boards = ceil((net * allowance) / 15);
  const rowScrews = ceil(36 / row.screwSpacing) + 1;
  const screwLines = ceil(60 / row.studSpacing) + 1;
  const screws = boards * rowScrews * screwLines;
  const coating = (((net * row.film * row.coats) / 12000) * 1728) / 231 / (1 - row.loss / 100);
  const jambs = doors * (2 * doorHeight + doorWidth) + windows * 2 * (windowHeight + windowWidth) + (vents * 2 * (ventHeight + ventWidth)) / 12;
  const bedVolume = ((net * row.bed) / 12) * allowance;
  const bedBags = ceil(bedVolume / row.bedYield);
  const module = (unitLength + joint) * (unitHeight + joint);
  const pointing = ((net * (1 - (unitLength * unitHeight) / module) * 0.5) / 12) * allowance;
  const pointingBags = ceil(pointing / row.jointYield);
  const flatUnits = ceil((net * allowance * 144) / module);
  return {
    gross,
    openings,
    net,
    boards,
    rowScrews,
    screwLines,
    screws,
    boxes: ceil((screws * allowance) / 250),
    rolls: ceil((boards * 8) / 150),
    coating,
    pails: ceil(coating / 5),
    jambs,
    flashing: ceil((jambs * allowance) / 10),
    screed: ceil((length * allowance) / 10),
    bedVolume,
    bedBags,
    module,
    pointing,
    pointingBags,
    cornerUnits: ceil((row.corners * height * 12) / (unitHeight + joint)),
    flatUnits,
    packs: ceil(flatUnits / 40),
    water: ((bedBags + pointingBags) * 5) / 4,
    batches: ceil(bedBags / 4),
    panels: ceil(length / 18),
    courses: ceil((height * 12) / (unitHeight + joint)),
    weight: net * row.unitWeight,
  };
};

const drawWall = (draw: Draw): WallRow => ({
  length: draw.whole(60, 160) / 2,
  height: draw.whole(16, 60) / 2,
  doorWidth: draw.whole(4, 16) / 2,
  doorHeight: draw.one([6.5, 7, 8]),
  doors: draw.whole(0, 2),
  windowWidth: draw.whole(2, 6) / 2,
  windowHeight: draw.whole(2, 5) / 2,
  windows: draw.whole(0, 3),
  ventWidth: draw.whole(6, 16),
  ventHeight: draw.whole(6, 16),
  vents: draw.whole(0, 3),
  corners: draw.whole(0, 4),
  waste: draw.whole(0, 4) * 5,
  loss: draw.whole(0, 8) * 5,
  film: draw.whole(10, 40),
  coats: draw.whole(1, 3),
  unitLength: draw.whole(64, 380) / 16,
  unitHeight: draw.whole(29, 128) / 16,
  joint: draw.whole(0, 12) / 16,
  bed: draw.whole(4, 12) / 16,
  bedYield: draw.whole(3, 10) / 10,
  jointYield: draw.whole(3, 10) / 10,
  screwSpacing: draw.one([6, 8, 10, 12]),
  studSpacing: draw.one([12, 16, 24]),
  unitWeight: draw.whole(16, 30) / 2,
});

const unitsOf = ({ given }: Definition): Readonly<Record<string, string>> => Object.fromEntries(Object.entries(given).map(([name, { is, unit = is }]) => [name, [unit].flat()[0] ?? is]));
const countsOf = ({ steps }: Definition): readonly string[] => Object.entries(steps).filter(([, { is }]) => is === "count").map(([name]) => name);

const jobOf = (name: string, run: { readonly definition: Definition }, plain: (row: never) => object, draw: (draw: Draw) => object): ManyJob =>
  ({ name, run, plain, draw, units: unitsOf(run.definition), counts: countsOf(run.definition) }) as unknown as ManyJob;

/** Film, joints and wall. */
export const manyJobs: readonly ManyJob[] = [jobOf("film", film, plainFilm, drawFilm), jobOf("joints", joints, plainJoints, drawJoints), jobOf("wall", wall, plainWall, drawWall)];

/** Rows as columns. */
export function columnsOf({ units }: ManyJob, rows: readonly PlainRow[]): Readonly<Record<string, { readonly values: Float64Array; readonly unit: string }>> {
  return Object.fromEntries(Object.entries(units).map(([name, unit]) => [name, { values: Float64Array.from(rows, (row) => row[name] as number), unit }]));
}
