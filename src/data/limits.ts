import type { Basis } from "../core/basis.js";

/** What every comparison with a limit is worth. */
export const limitCaution =
  "A comparison of figures with the limits on file, and no more: it does not look at the framing, the fasteners, the bond or earthquakes. The code in force where the wall stands, the project documents and, where the code asks for it, a licensed design professional decide.";

/** What every weight is worth. */
export const weightCaution =
  "Estimate of dead load from thickness and density. Real stone and wet mortar weigh more than tables say: weigh a piece, wet. Whether framing and fasteners carry it is for the local code and a licensed design professional.";

/** Standard gravity: what turns a mass into its weight. */
export const standardGravity = { kind: "definition", says: "standard gravity is 9.80665 m/s2" } as const satisfies Basis;

const deadLoads = {
  kind: "published",
  publisher: "ASCE",
  title: "ASCE 7, Minimum Design Loads for Buildings and Other Structures",
  edition: "7-05 and 7-10",
  locator: "Table C3-1, as reproduced",
} as const satisfies Basis;

const stoneDensities = {
  kind: "published",
  publisher: "ASTM International",
  title: "C503, C568, C615, C616, physical requirements",
  edition: "edition not known",
  locator: "density",
  quotedBy: "a stone trade page",
  says: "the least density that the standard asks for, not that of a real stone",
} as const satisfies Basis;

const framedWall = {
  kind: "published",
  publisher: "US HUD (NAHB Research Center)",
  title: "Residential Structural Design Guide",
  edition: "2000",
  locator: "Table 3.2, wall construction",
  quotedBy: "a reproduction of the table",
} as const satisfies Basis;

/** Weights of whole layers, as a table prints them. */
export const layerTable = {
  "gypsum sheathing, 1/2 in": { weight: "2 lb/ft2", basis: deadLoads },
  "fibreboard, 1/2 in": { weight: "0.75 lb/ft2", basis: deadLoads },
  "liquid membrane": { weight: "1 lb/ft2", basis: deadLoads },
  "wood studs 2x4, sheathing 1/2 in, gypsum board 1/2 in inside": { weight: "6 lb/ft2", basis: framedWall },
} as const;

/** Densities, as a table prints them; gypsum board as 0.55 lb/ft2 to each 1/8 in. */
export const densityTable = {
  "gypsum board": { density: "52.8 lb/ft3", basis: deadLoads },
  granite: { density: "160 lb/ft3", basis: stoneDensities },
  marble: { density: "162 lb/ft3", basis: stoneDensities },
  "limestone, low density": { density: "110 lb/ft3", basis: stoneDensities },
  "limestone, medium density": { density: "135 lb/ft3", basis: stoneDensities },
  "limestone, high density": { density: "160 lb/ft3", basis: stoneDensities },
  "quartzitic sandstone": { density: "150 lb/ft3", basis: stoneDensities },
  quartzite: { density: "160 lb/ft3", basis: stoneDensities },
} as const;

const code1976 = {
  kind: "published",
  publisher: "National Concrete Masonry Association",
  title: "TEK 79 Concrete Masonry Veneers",
  edition: "1976",
  locator: "adhered veneer",
} as const satisfies Basis;

const saudiCode = {
  kind: "published",
  publisher: "Saudi Building Code National Committee",
  title: "SBC 201, adapted from the International Building Code",
  edition: "2018 to 2024 family",
  locator: "chapter 14, exterior walls",
  quotedBy: "a digest of the code",
} as const satisfies Basis;

const tms2013 = { kind: "from memory", says: "TMS 402-13 and 402-16, adhered veneer: 15 psf, 2-5/8 in thick, 36 in, 5 ft2" } as const satisfies Basis;
const tms2022 = { kind: "from memory", says: "TMS 402-22, adhered veneer: 30 psf; the chapter was written anew and has not been seen" } as const satisfies Basis;
const ibcPorcelain = { kind: "from memory", says: "International Building Code, porcelain tile outside: to 3.5 psf 72 in and 17.5 ft2; over it 48 in, 9 ft2, 6 psf" } as const satisfies Basis;

/** One class of units in an edition: all that is on file for it. The load is that of the units alone. */
export interface VeneerClass {
  readonly basis: Basis;
  readonly mostLoad?: string;
  readonly mostThickness?: string;
  readonly leastThickness?: string;
  readonly mostSide?: string;
  readonly mostArea?: string;
}

/** Limits of adhered veneer by edition; where there are several classes, the first whose load the unit keeps to holds. */
export const veneerEditions = {
  "1970s code": [{ basis: code1976, mostLoad: "15 psf" }],
  "TMS 402-13/16": [{ basis: tms2013, mostLoad: "15 psf", mostThickness: "2-5/8 in", mostSide: "36 in", mostArea: "5 ft2" }],
  "TMS 402-22": [{ basis: tms2022, mostLoad: "30 psf" }],
  "SBC 201": [{ basis: saudiCode, leastThickness: "6.35 mm" }],
  "SBC 201, porcelain tile": [
    { basis: saudiCode, mostLoad: "0.17 kN/m2", mostSide: "1800 mm", mostArea: "1.6 m2" },
    { basis: saudiCode, mostLoad: "0.30 kN/m2", mostSide: "1200 mm", mostArea: "0.8 m2" },
  ],
  "IBC, porcelain tile": [
    { basis: ibcPorcelain, mostLoad: "3.5 psf", mostSide: "72 in", mostArea: "17.5 ft2" },
    { basis: ibcPorcelain, mostLoad: "6 psf", mostSide: "48 in", mostArea: "9 ft2" },
  ],
} as const satisfies Readonly<Record<string, readonly VeneerClass[]>>;

const clearancesIrc = {
  kind: "published",
  publisher: "ICC",
  title: "International Residential Code",
  edition: "2018",
  locator: "R703.12.1",
  quotedBy: "a text that cites the section",
} as const satisfies Basis;

const clearancesMetric = {
  kind: "published",
  publisher: "Saudi Building Code National Committee",
  title: "SBC 201, adapted from the International Building Code",
  edition: "2018 to 2024 family",
  locator: "1404.10.1.3",
  quotedBy: "a digest of the code",
} as const satisfies Basis;

/** Least clearances under adhered veneer on stud walls; the metric text has figures of its own, and 100 mm is not 4 in. */
export const clearanceTable = {
  "IRC 2018": { aboveEarth: "4 in", abovePaving: "2 in", aboveWalkingSurface: "1/2 in", basis: clearancesIrc },
  "SBC 201 (metric)": { aboveEarth: "100 mm", abovePaving: "50 mm", aboveWalkingSurface: "12.5 mm", basis: clearancesMetric },
} as const;

const largeUnits = {
  kind: "published",
  publisher: "ANSI",
  title: "A108.02",
  edition: "edition not known",
  locator: "4.2.2, units with an edge of 15 in or more",
  quotedBy: "tile trade texts",
} as const satisfies Basis;

const smallUnits = { kind: "from memory", says: "ANSI A108.02, units with all edges under 15 in: 1/4 in in 10 ft and 1/16 in in 1 ft" } as const satisfies Basis;

const thinBrick = {
  kind: "published",
  publisher: "Brick Industry Association",
  title: "Technical Note 28C, Thin Brick Veneer",
  edition: "April 2014",
  locator: "summary",
  says: "a plane within 1/4 in in 10 ft (6 mm in 3.05 m); studs that bend no more than span/360",
} as const satisfies Basis;

const secondPlasterCoat = {
  kind: "published",
  publisher: "ICC",
  title: "International Building Code (a state's edition)",
  edition: "2018",
  locator: "Table 2512.6",
  says: "the second coat of plaster within 1/4 in under a straightedge of 5 ft",
} as const satisfies Basis;

/** The edge from which a unit counts as large. */
export const largeEdge = "15 in";

/** The greatest gap under a straightedge of each length. */
export const flatnessTable = {
  "ANSI A108.02, large units": { basis: largeUnits, gaps: [{ straightedge: "10 ft", gap: "1/8 in" }, { straightedge: "2 ft", gap: "1/16 in" }] },
  "ANSI A108.02, small units": { basis: smallUnits, gaps: [{ straightedge: "10 ft", gap: "1/4 in" }, { straightedge: "1 ft", gap: "1/16 in" }] },
  "BIA Technical Note 28C": { basis: thinBrick, gaps: [{ straightedge: "10 ft", gap: "1/4 in" }] },
  "IBC 2018, second plaster coat": { basis: secondPlasterCoat, gaps: [{ straightedge: "5 ft", gap: "1/4 in" }] },
} as const;

const panelContact = {
  kind: "published",
  publisher: "ANSI",
  title: "A108.19, gauged porcelain panels",
  edition: "edition not known",
  locator: "mortar coverage",
  quotedBy: "a tile contractors' magazine, April 2018, p. 64",
  says: "80 % on walls, 85 % on floors, no void over 2 in2",
} as const satisfies Basis;

const dryContact = {
  kind: "published",
  publisher: "ANSI",
  title: "A108.5",
  edition: "edition not known",
  locator: "contact area",
  quotedBy: "tile trade press",
  says: "80 % on average inside where it is dry; no void over 2 in2; corners and edges fully supported",
} as const satisfies Basis;

const generalContact = {
  kind: "published",
  publisher: "a tile contractors' association",
  title: "its magazine, Coverage",
  edition: "January 2017",
  locator: "p. 78",
  says: "95 % outside and in wet rooms; 100 % behind natural stone",
} as const satisfies Basis;

/** The least share of the back of a unit that is in contact with mortar. */
export const contactTable = {
  "inside, dry": { least: "80 %", basis: dryContact },
  "gauged panel on a wall": { least: "80 %", basis: panelContact },
  "gauged panel on a floor": { least: "85 %", basis: panelContact },
  "outside or wet": { least: "95 %", basis: generalContact },
  "natural stone": { least: "100 %", basis: generalContact },
} as const;

/** The largest single void allowed. */
export const voidTable = {
  "ANSI A108.19": { most: "2 in2", basis: panelContact },
  "ANSI A108.5": { most: "2 in2", basis: dryContact },
} as const;

const adhesives = {
  kind: "published",
  publisher: "CEN",
  title: "EN 12004 and EN 1348",
  edition: "2007 to 2017",
  locator: "classes",
  quotedBy: "trade texts",
  says: "tensile adhesion in the laboratory, dry and after water, heat and frost",
} as const satisfies Basis;

const mortarsFromMemory = { kind: "from memory", says: "ANSI A118.1 150 psi, A118.4 200 psi, A118.15 400 psi: shear bond to porcelain in the laboratory" } as const satisfies Basis;

/** Least stresses on file, with the way each is tested; shear and tension are never compared. */
export const adhesionTable = {
  "1970s code": { test: "shear", least: "50 psi", basis: code1976 },
  "EN 12004 C1": { test: "tension", least: "0.5 N/mm2", basis: adhesives },
  "EN 12004 C2": { test: "tension", least: "1.0 N/mm2", basis: adhesives },
  "ANSI A118.1": { test: "shear", least: "150 psi", basis: mortarsFromMemory },
  "ANSI A118.4": { test: "shear", least: "200 psi", basis: mortarsFromMemory },
  "ANSI A118.15": { test: "shear", least: "400 psi", basis: mortarsFromMemory },
} as const;

/** What the span of framing is divided by. */
export const deflectionTable = {
  "L/360": { divisor: "360", basis: thinBrick },
  "L/600": { divisor: "600", basis: { kind: "from memory", says: "L/600 is commonly asked for behind stone and brick on steel studs" } },
  "L/720": { divisor: "720", basis: { kind: "from memory", says: "L/720 is asked for by some specifications behind stone and brick" } },
} as const satisfies Readonly<Record<string, { readonly divisor: string; readonly basis: Basis }>>;
