// What a worked solution costs beside the same arithmetic in plain numbers, in one run. Ratios hold; times indicate.
import { bench, describe } from "vitest";
import { quantity } from "../../src/core/index.js";
import { unitsForFace } from "../../src/layout/index.js";

const texts = { area: "312 ft2", cornerCover: "24 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", headJoint: "3/8 in", bedJoint: "3/8 in", waste: "8 %", packCount: "40" } as const;
const quantities = {
  area: quantity("area", texts.area),
  cornerCover: quantity("area", texts.cornerCover),
  unitLength: quantity("length", texts.unitLength),
  unitHeight: quantity("length", texts.unitHeight),
  headJoint: quantity("length", texts.headJoint),
  bedJoint: quantity("length", texts.bedJoint),
  waste: quantity("ratio", texts.waste),
  packCount: quantity("count", texts.packCount),
};

/** A plain reader: a number, or a whole part and a fraction, before a blank. */
function plainRead(text: string): number {
  const [, whole = "0", above, below] = /^(\d+)(?:-(\d+)\/(\d+))?/.exec(text) ?? [];
  const [, n, d] = /^(\d+)\/(\d+)/.exec(text) ?? [];
  if (n !== undefined) return Number(n) / Number(d);
  return above === undefined ? Number(whole) : Number(whole) + Number(above) / Number(below);
}

interface Plain {
  readonly area: number;
  readonly cornerCover: number;
  readonly unitLength: number;
  readonly unitHeight: number;
  readonly headJoint: number;
  readonly bedJoint: number;
  readonly waste: number;
  readonly packCount: number;
}

function plainUnits({ area, cornerCover, unitLength, unitHeight, headJoint, bedJoint, waste, packCount }: Plain): object {
  const flatArea = area - cornerCover;
  const unitsPerArea = 144 / ((unitLength + headJoint) * (unitHeight + bedJoint));
  const net = flatArea * unitsPerArea;
  const withWaste = net * (1 + waste / 100);
  return { flatArea, unitsPerArea, net, withWaste, toOrder: Math.ceil(withWaste), packs: Math.ceil(withWaste / packCount) };
}

const plain = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, plainRead(text)])) as unknown as Plain;
let kept: unknown;

describe("from eight texts", () => {
  bench("solve", () => {
    kept = unitsForFace.solve(texts);
  });
  bench("plain numbers that read the texts too", () => {
    kept = plainUnits(Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, plainRead(text)])) as unknown as Plain);
  });
});

describe("from ready values", () => {
  bench("solve", () => {
    kept = unitsForFace.solve(quantities);
  });
  bench("answers alone", () => {
    kept = unitsForFace(quantities);
  });
  bench("plain numbers", () => {
    kept = plainUnits(plain);
  });
});

if (kept === null) throw new Error("nothing was kept");
