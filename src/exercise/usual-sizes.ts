import type { UnitCode } from "../core/units.js";

/** Values from one to another, a step apart. */
export type Marks = readonly [from: number, to: number, step: number];

/** Values as they are met on a wall, by the unit; there is no more behind them than common practice. */
export const marksByUnit: Partial<Record<UnitCode, Marks>> = {
  ratio: [0.5, 3, 0.05], "%": [5, 60, 5], count: [4, 60, 2], deg: [30, 90, 15], rad: [0.5, 1.5, 0.1],
  mil: [10, 60, 5], in: [0.5, 12, 0.125], ft: [6, 60, 1], yd: [2, 20, 1], um: [250, 1500, 50], mm: [10, 300, 5], cm: [1, 30, 1], m: [2, 20, 0.5],
  in2: [4, 144, 2], ft2: [60, 900, 4], yd2: [10, 100, 1], mm2: [2500, 90000, 100], cm2: [25, 900, 5], m2: [6, 90, 0.5],
  in3: [5, 200, 5], ft3: [0.5, 24, 0.5], yd3: [1, 10, 0.5], gal: [1, 60, 1], qt: [2, 12, 0.5], pt: [2, 12, 0.5], floz: [8, 30, 1], mL: [250, 900, 50], L: [10, 400, 5], m3: [0.5, 10, 0.5],
  oz: [4, 60, 1], lb: [20, 100, 2], ton: [1, 10, 0.5], g: [100, 900, 50], kg: [10, 50, 1], t: [1, 10, 0.5],
  s: [10, 90, 5], min: [2, 90, 1], h: [1, 24, 0.5], d: [1, 28, 1],
  degF: [40, 95, 1], degC: [5, 35, 1], K: [278, 308, 1], degFDifference: [2, 30, 1], degCDifference: [1, 15, 1], KDifference: [2500, 6000, 100],
  lbf: [50, 800, 5], kip: [1, 10, 0.5], N: [200, 3500, 50], kN: [1, 20, 0.5],
  psf: [10, 45, 1], psi: [500, 4000, 100], ksi: [40, 65, 5], inHg: [27, 31, 0.1], Pa: [500, 2200, 50], hPa: [900, 1030, 5], kPa: [90, 103, 0.5], MPa: [280, 450, 10],
  "lbf/ft": [100, 900, 10], "N/m": [1500, 12000, 100], "kN/m": [2, 12, 0.5], mph: [5, 30, 1], "km/h": [8, 48, 2], "m/s": [2, 14, 0.5], "ft/h": [60, 240, 10], "m/h": [20, 75, 5], "ft/min": [1, 6, 0.5],
  "ft2/h": [12, 60, 2], "m2/h": [1, 6, 0.5], "lb/ft3": [70, 130, 1], "lb/gal": [10, 16, 0.5], "kg/m3": [1200, 2100, 10], "kg/L": [1.6, 2.1, 0.05],
  "lb/ft2": [8, 15, 0.5], "kg/m2": [40, 75, 1], "lb/ft": [5, 60, 1], "kg/m": [8, 90, 1], "ft2/gal": [25, 200, 5], "m2/L": [1, 6, 0.1],
  "/in": [8, 24, 1], "/mm": [0.4, 1, 0.1], "/ft2": [0.5, 6, 0.25], "/m2": [5, 60, 1], "/d": [0.1, 0.5, 0.05], "/h": [0.005, 0.02, 0.001],
};

/** Values of inputs whose words say more than their unit, as `name: what it is`; the first that fits is taken. */
const marksByWords: readonly (readonly [words: RegExp, marks: Partial<Record<UnitCode, Marks>>])[] = [
  [/^(head|bed)Joint:/, { in: [0.25, 0.5, 0.125], mm: [6, 12, 2] }],
  [/^unitLength:/, { in: [7.625, 15.625, 2], mm: [190, 390, 50] }],
  [/^unitHeight:/, { in: [2.25, 7.75, 0.125], mm: [57, 190, 1] }],
  [/^unitThickness:/, { in: [0.75, 2, 0.125], mm: [20, 50, 5] }],
  [/^courseHeight:/, { in: [2.5, 8, 0.5], mm: [60, 200, 5] }],
  [/^longLeg:/, { in: [7, 14, 0.5], mm: [180, 350, 10] }],
  [/^(shortLeg|returnDepth):/, { in: [3, 6, 0.5], mm: [75, 150, 5] }],
  [/^(acrossStuds|boardWidth):/, { in: [36, 48, 12], mm: [900, 1200, 300] }],
  [/^(alongStuds|boardHeight):/, { in: [60, 96, 12], mm: [1500, 2400, 300] }],
  [/^studSpacing:/, { in: [16, 24, 8], mm: [400, 600, 200] }],
  [/^(screw|greatest|edge)Spacing:/, { in: [6, 12, 2], mm: [150, 300, 50] }],
  [/^(edgeDistance|leastPenetration|pointLength):/, { in: [0.25, 0.75, 0.125], mm: [5, 20, 5] }],
  [/^screwDiameter:/, { in: [0.138, 0.216, 0.026], mm: [3.5, 5.5, 0.5] }],
  [/^headDiameter:/, { in: [0.25, 0.5, 0.0625], mm: [6, 12, 1] }],
  [/: .*thickness.* steel|^steel:/, { in: [0.03, 0.07, 0.004], mm: [0.8, 1.8, 0.1] }],
  [/^(layers|dimpleWidth):/, { in: [0.5, 2, 0.125], mm: [12, 50, 1] }],
  [/^(sheetWidth):/, { in: [36, 60, 12], mm: [900, 1500, 100] }],
  [/^(bandWidth):/, { in: [4, 12, 1], mm: [100, 300, 25] }],
  [/^(dimpleDepth|backButter|deepest|meanHollow|profileDepth|squeezeOut):/, { in: [0.125, 0.375, 0.0625], mm: [3, 9, 1] }],
  [/^(depth|gap|bed|width|tooth|toolRadius|layer|thickness):/, { in: [0.125, 1.25, 0.125], mm: [3, 32, 1] }],
  [/lap(Width)?:/i, { in: [1, 6, 0.5], mm: [25, 150, 5] }],
  [/: mean roof height/, { ft: [15, 60, 1], m: [5, 18, 0.5] }],
  [/^(altitude|elevation):/, { ft: [0, 6000, 100], m: [0, 1800, 50] }],
  [/^(rise):/, { ft: [0.5, 3, 0.25], m: [0.2, 1, 0.1] }],
  [/^(totalLength|jointLength|length):/, { ft: [20, 400, 2], m: [6, 120, 1] }],
  [/^(rollLength):/, { ft: [50, 150, 50], m: [15, 50, 5] }],
  [/^(openings|deducted|turned|returns|openingReturns|edgeReturns|growth|cornerCover|soffits|loss|archArea):/, { ft2: [4, 56, 1], m2: [0.5, 5, 0.25] }],
  [/^(effectiveArea):/, { ft2: [10, 120, 5], m2: [1, 12, 0.5] }],
  [/^(area|walls|gross):/, { ft2: [120, 900, 4], m2: [12, 90, 0.5] }],
  [/yield:/i, { ft3: [0.4, 0.8, 0.05], L: [11, 23, 0.5] }],
  [/^(volume|net|partsVolume):/, { ft3: [4, 40, 0.5], L: [100, 1200, 10] }],
  [/^(mixerHolds):/, { ft3: [2, 9, 0.5], L: [60, 250, 10] }],
  [/^packVolume:/, { gal: [1, 5, 4], L: [5, 20, 5] }],
  [/^water(Low)?:/, { qt: [4, 6, 0.25], L: [4, 6, 0.25] }],
  [/^waterHigh:/, { qt: [6, 8, 0.25], L: [6, 8, 0.25] }],
  [/^(bagMass|dryMass):/, { lb: [50, 80, 10], kg: [20, 40, 5] }],
  [/^(waste|thinner):/, { "%": [5, 20, 1] }],
  [/^(lossShare|toolingShare):/, { "%": [10, 40, 5] }],
  [/^volumeSolids:/, { "%": [30, 70, 1] }],
  [/^air:/, { "%": [4, 20, 1] }],
  [/^voids:/, { "%": [25, 45, 1] }],
  [/^humidity:/, { "%": [20, 95, 1] }],
  [/saturation:/i, { psi: [0.1, 0.9, 0.01], kPa: [0.8, 5, 0.1], inHg: [0.2, 1.2, 0.01] }],
  [/^barometer:/, { inHg: [24, 31, 0.1], kPa: [80, 103, 0.5] }],
  [/^speed:/, { mph: [90, 150, 5], "m/s": [40, 67, 1] }],
  [/safetyFactor:/i, { ratio: [2, 4, 0.25] }],
  [/^(exposureCoefficient|importance|elevationFactor):/, { ratio: [0.85, 1.15, 0.05] }],
  [/^(slopeFactor|directionality):/, { ratio: [0.85, 1, 0.05] }],
  [/^topography:/, { ratio: [1, 1.5, 0.1] }],
  [/^coefficientAt10:/, { ratio: [-1.4, -1, 0.1] }],
  [/^(coefficientAt500|externalCoefficient):/, { ratio: [-0.9, -0.7, 0.1] }],
  [/^internalCoefficient:/, { ratio: [0.18, 0.55, 0.37] }],
  [/^relativeDensity:/, { ratio: [1.2, 3.2, 0.05] }],
  [/^ratio(Low):/, { ratio: [0.14, 0.18, 0.005] }],
  [/^ratio(High):/, { ratio: [0.18, 0.24, 0.005] }],
  [/^sandPart:/, { ratio: [2, 5, 0.25] }],
  [/part:/i, { ratio: [0.25, 1.5, 0.25] }],
  [/^coats:/, { count: [1, 3, 1] }],
  [/^packCount:/, { count: [100, 1000, 100] }],
  [/^(overlaps|overdriven|short|toolers):/, { count: [1, 6, 1] }],
  [/^(spacersPerUnit|readingsPerSpot|spotsPerArea):/, { count: [1, 5, 1] }],
  [/^(units|flats):/, { count: [100, 900, 10] }],
];

/** The values that an input may take in a unit, by its name and what it is; nothing where nothing is usual. */
export function usualMarks(name: string, says: string, unit: UnitCode): Marks | undefined {
  const words = `${name}: ${says}`;
  return marksByWords.find(([pattern, marks]) => marks[unit] !== undefined && pattern.test(words))?.[1][unit] ?? marksByUnit[unit];
}
