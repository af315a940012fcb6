// 100,000 random jobs, worked out a second time here in whole numbers alone: no count may be one off. Sizes are drawn so
// that many jobs take exactly a whole number of pails, bags, boards or boxes; those are what rounding gets wrong.
import { expect, it } from "vitest";
import { boardCount } from "../../src/boards/index.js";
import { boardScrews, screwOrder } from "../../src/fasteners/index.js";
import { coatingOrder } from "../../src/film/index.js";
import { coursedFace, pointingOrder } from "../../src/joints/index.js";
import { type Draw, drawFrom } from "../support/random.js";

/** A fraction of whole numbers; nothing of the engine's. */
type Ratio = readonly [above: bigint, below: bigint];

const times = (...all: readonly Ratio[]): Ratio => all.reduce(([a, b], [c, d]) => [a * c, b * d], [1n, 1n]);
const over = ([a, b]: Ratio, [c, d]: Ratio): Ratio => [a * d, b * c];
const plus = ([a, b]: Ratio, [c, d]: Ratio): Ratio => [a * d + c * b, b * d];
const minus = (one: Ratio, [c, d]: Ratio): Ratio => plus(one, [-c, d]);
const of = (above: number, below = 1): Ratio => [BigInt(above), BigInt(below)];
const isWhole = ([a, b]: Ratio): boolean => a % b === 0n;
/** Rounded up; everything here is above nought. */
const up = ([a, b]: Ratio): bigint => (a + b - 1n) / b;

/** A number of eighths or tenths of a unit, as it is written and as it is. */
interface Size {
  readonly text: string;
  readonly ratio: Ratio;
}
const parts = (above: number, below: number): Size => ({ text: below === 10 ? `${String(Math.floor(above / 10))}.${String(above % 10)}` : `${String(above)}/${String(below)}`, ratio: of(above, below) });
const percent = (share: number): Ratio => of(share, 100);

/** One job: the counts the package gives, the same from here, and whether something was a whole number before rounding. */
interface Job {
  readonly says: string;
  readonly given: readonly string[];
  readonly wanted: readonly bigint[];
  readonly lands: boolean;
}

/** A square foot is 144 in², a mil 1/1000 in, a gallon 231 in³; a litre is 1000 cm³. */
function pails(draw: Draw): Job {
  const metric = draw.one([true, false]);
  const coats = draw.whole(1, 4);
  const share = draw.one([0, 5, 10, 15, 20, 25, 30, 40, draw.whole(0, 60)]);
  const asLoss = draw.one([true, false]);
  const film = metric ? draw.whole(2, 30) * 25 : draw.whole(2, 60);
  const area = parts(draw.one([draw.whole(1, 60) * 385, draw.whole(1, 2000) * 10, draw.whole(1, 99999)]), draw.one([1, 2, 10]));
  const pack = metric ? parts(draw.one([50, 100, 150, 200]), 10) : parts(draw.one([10, 20, 35, 50]), 10);
  const input = { area: `${area.text} ${metric ? "m2" : "ft2"}`, wetFilm: `${String(film)} ${metric ? "um" : "mil"}`, coats, packVolume: `${pack.text} ${metric ? "L" : "gal"}` } as const;
  const order = coatingOrder({ ...input, ...(asLoss ? { lossShare: `${String(share)} %` } : { waste: `${String(share)} %` }) } as never);
  // Gallons: area × 144 × film / 1000 × coats / 231. Litres: area × film / 1000 × coats.
  const net = times(area.ratio, of(film, 1000), of(coats), metric ? of(1) : of(144, 231));
  const bought = asLoss ? over(net, minus(of(1), percent(share))) : times(net, plus(of(1), percent(share)));
  const count = over(bought, pack.ratio);
  return { says: JSON.stringify([input, share, asLoss]), given: [order.packs.to().toFixed()], wanted: [up(count)], lands: isWhole(count) };
}

/** Joints of a coursed face: of each unit with its joints, (L + t)(H + b) - LH is joint. */
function jointBags(draw: Draw): Job {
  // Units of 12 x 4 in with half-inch joints are 11/75 joint, so areas by the 45 ft2 often come out whole.
  const round = draw.one([true, false, false]);
  const area = parts(round ? draw.whole(1, 90) * 45 : draw.one([draw.whole(1, 400) * 12, draw.whole(1, 3000)]), round ? 1 : 2);
  const [long, high] = round ? [parts(96, 8), parts(32, 8)] : [parts(draw.one([92, 64, 93, draw.whole(20, 200)]), 8), parts(draw.one([29, 18, draw.whole(10, 64)]), 8)];
  const [head, bed] = round ? [parts(8, 16), parts(8, 16)] : [parts(draw.one([6, 8, 4, 12]), 16), parts(draw.one([6, 8, 4, 12]), 16)];
  const depth = parts(round ? draw.one([8, 6, 4]) : draw.whole(3, 16), 8);
  const waste = draw.one([0, 5, 10, 20, draw.whole(0, 35)]);
  const bag = parts(draw.one([3, 4, 5, 6, 8, 10]), 10);
  const face = { area: `${area.text} ft2`, unitLength: `${long.text} in`, unitHeight: `${high.text} in`, headJoint: `${head.text} in`, bedJoint: `${bed.text} in`, depth: `${depth.text} in` };
  const { volume } = coursedFace(face as never);
  const order = pointingOrder({ net: volume, waste: `${String(waste)} %`, bagYield: `${bag.text} ft3` } as never);
  const module = times(plus(long.ratio, head.ratio), plus(high.ratio, bed.ratio));
  const joint = over(minus(module, times(long.ratio, high.ratio)), module);
  const bags = over(times(area.ratio, joint, depth.ratio, of(1, 12), plus(of(1), percent(waste))), bag.ratio);
  return { says: JSON.stringify([face, waste, bag.text]), given: [order.bags.to().toFixed()], wanted: [up(bags)], lands: isWhole(bags) };
}

/** Boards by area, screws in a board line by line, boxes of screws. A metre is 10000/254 in, so millimetres stay whole. */
function boardsAndScrews(draw: Draw): Job {
  const metric = draw.one([true, false]);
  const unit = metric ? "mm" : "in";
  const size = (inches: number, millimetres: number): Size => (metric ? parts(millimetres, 1) : parts(inches, 1));
  const [width, height] = [draw.one([size(48, 1200), size(36, 900), size(32, 800)]), draw.one([size(96, 2400), size(60, 1500), size(48, 1200)])];
  const studs = draw.one([size(16, 400), size(24, 600), size(12, 300)]);
  const spacing = metric ? parts(draw.one([100, 150, 200, 75]), 1) : parts(draw.one([32, 48, 64, 24, draw.whole(16, 96)]), 8);
  const edge = metric ? parts(draw.one([10, 15, 20]), 1) : parts(draw.one([3, 4, 8]), 8);
  const waste = draw.one([0, 5, 10, draw.whole(0, 30)]);
  const area = parts(draw.one([draw.whole(1, 200) * 32, draw.whole(1, 90) * 36, draw.whole(1, 9999)]), 1);
  const box = draw.one([100, 250, 1000]);
  const boards = boardCount({ area: `${area.text} ${metric ? "m2" : "ft2"}`, boardWidth: `${width.text} ${unit}`, boardHeight: `${height.text} ${unit}`, waste: `${String(waste)} %` } as never);
  const { screws } = boardScrews({ acrossStuds: `${width.text} ${unit}`, alongStuds: `${height.text} ${unit}`, studSpacing: `${studs.text} ${unit}`, screwSpacing: `${spacing.text} ${unit}`, edgeDistance: `${edge.text} ${unit}` } as never);
  const order = screwOrder({ boards: boards.placed, screwsPerBoard: screws, waste: `${String(waste)} %`, packCount: box } as never);
  // A board's face in m² or ft².
  const face = times(width.ratio, height.ratio, metric ? of(1, 1_000_000) : of(1, 144));
  const net = over(area.ratio, face);
  const toOrder = times(net, plus(of(1), percent(waste)));
  const spaces = over(minus(height.ratio, times(of(2), edge.ratio)), spacing.ratio);
  const lines = over(width.ratio, studs.ratio);
  const perBoard = (up(lines) + 1n) * (up(spaces) + 1n);
  const ordered = times([up(net) * perBoard, 1n], plus(of(1), percent(waste)));
  const boxes = over(ordered, of(box));
  return {
    says: JSON.stringify([unit, width.text, height.text, studs.text, spacing.text, edge.text, area.text, waste, box]),
    given: [boards.placed, boards.toOrder, screws, order.toOrder, order.boxes].map((count) => count.to().toFixed()),
    wanted: [up(net), up(toOrder), perBoard, up(ordered), up(boxes)],
    lands: [net, toOrder, spaces, boxes].some(isWhole),
  };
}

it.each([
  ["pails of coating", pails, 40_000, 1],
  ["bags of joint mortar", jointBags, 30_000, 2],
  ["boards, screws and boxes", boardsAndScrews, 30_000, 3],
] as const)("%s", { timeout: 120_000 }, (_what, job, count, seed) => {
  const draw = drawFrom(seed);
  const wrong: string[] = [];
  let landed = 0;
  for (let index = 0; index < count; index += 1) {
    const { says, given, wanted, lands } = job(draw);
    if (given.join() !== wanted.join()) wrong.push(`${says}: ${given.join()} and not ${wanted.join()}`);
    if (lands) landed += 1;
  }
  expect(wrong).toEqual([]);
  // Enough of them are whole numbers before they are rounded.
  expect(landed).toBeGreaterThan(count / 200);
});
