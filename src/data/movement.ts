import type { Basis } from "../core/basis.js";

/** What every movement joint is worth. */
export const movementCaution =
  "Estimate from the named rule. A joint in the backing, the framing or the floor runs through the veneer whatever the spacing; the specification, the local code and the designer of the wall decide where joints go.";

/** Where joints go whatever the spacing. */
export const jointsThrough = {
  kind: "common practice",
  says: "a joint in what is behind runs through the veneer at the same place; there is a joint at each change of plane, of material and of support",
} as const satisfies Basis;

/** How much what is free to move grows by heat. */
export const thermalGrowth = { kind: "derived", says: "growth is length times coefficient times temperature difference" } as const satisfies Basis;

/** How much what is free to move grows or shrinks by moisture. */
export const moistureGrowth = { kind: "derived", says: "movement is length times strain" } as const satisfies Basis;

/** How wide a joint must be for the sealant in it to follow. */
export const sealantEquation = {
  kind: "published",
  publisher: "Cornell University (J. Ochshorn)",
  title: "ARCH 262, sealant joint calculation",
  edition: "2001 to 2004",
  locator: "W = (100/X) (e L dT + M) + t",
} as const satisfies Basis;

/** Joints come in eighths of an inch. */
export const eighths = { kind: "common practice", says: "joint widths are rounded up to the next 1/8 in" } as const satisfies Basis;

/** The spacing that a joint of some width allows. */
export const brickSpacing = {
  kind: "published",
  publisher: "Brick Industry Association",
  title: "Technical Note 18A, Accommodating Expansion of Brickwork",
  edition: "2006 and 2019",
  locator: "p. 4",
  says: "spacing is width times the share by which the sealant gives, over the strain of the brickwork",
} as const satisfies Basis;

const brickLimits = {
  kind: "published",
  publisher: "Brick Industry Association",
  title: "Technical Note 18A, Accommodating Expansion of Brickwork",
  edition: "2006 and 2019",
  locator: "summary, p. 4",
  says: "25 ft without openings, 20 ft with them, 15 ft in parapets, within 10 ft of a corner, 1/4 in under a shelf angle",
} as const satisfies Basis;

/** Joint spacing in brickwork by the kind of wall. */
export const brickTable = {
  basis: brickLimits,
  spacing: { "without openings": "25 ft", "with openings": "20 ft", parapet: "15 ft" },
  fromCorner: "10 ft",
  underAngle: "1/4 in",
} as const;

/** Joint spacing in walls of concrete masonry. */
export const blockSpacing = {
  kind: "published",
  publisher: "NCMA",
  title: "TEK 10-2B, Control Joints for Concrete Masonry Walls, empirical method",
  edition: "2005",
  locator: "Table 1",
  quotedBy: "course notes",
  says: "1.5 times the height of the wall, to 25 ft; half of it at corners",
} as const satisfies Basis;

const tileJoints = {
  kind: "published",
  publisher: "Tile Council of North America",
  title: "EJ171, movement joints outside",
  edition: "as of 2025",
  locator: "width and spacing",
  quotedBy: "a tile contractors' association, its page on width and spacing",
  says: "joints every 8 to 12 ft each way; 3/8 in wide at 8 ft, 1/2 in at 12 ft",
} as const satisfies Basis;

const tileJointsBefore = {
  kind: "published",
  publisher: "McGraw-Hill (Merritt and Ricketts)",
  title: "Building Design and Construction Handbook, tile",
  edition: "5th and 6th",
  locator: "expansion joints",
  says: "3/8 in wide at 12 ft, 1/2 in at 16 ft; not less than 4 times the movement",
} as const satisfies Basis;

/** Widths by spacing, narrowest first; the older text asks for a multiple of the movement besides. */
export const spacingTable = {
  "EJ171 as of 2025": { basis: tileJoints, widths: [{ to: "8 ft", width: "3/8 in" }, { to: "12 ft", width: "1/2 in" }], multiple: undefined },
  "EJ171, older text": { basis: tileJointsBefore, widths: [{ to: "12 ft", width: "3/8 in" }, { to: "16 ft", width: "1/2 in" }], multiple: "4" },
} as const;

/** How much wider a joint is made where the year's temperatures lie far apart. */
export const wideRange = {
  kind: "published",
  publisher: "Tile Council of North America",
  title: "EJ171, movement joints outside",
  edition: "as of 2025, and the older text alike",
  locator: "width",
  quotedBy: "a tile contractors' association, its page on width and spacing",
  says: "1/16 in more for each 15 degF by which the range of temperature passes 100 degF",
} as const satisfies Basis;

/** A joint in stone by a multiple of the movement. */
export const stoneMultiple = {
  kind: "published",
  publisher: "Stone World",
  title: "Adhered exterior stone veneers",
  edition: "trade press, date not known",
  locator: "flexible joints",
  says: "2 to 4 times the expected movement, and not less than 3/8 in; an older handbook on tile has 4 times",
} as const satisfies Basis;

const concretes = { kind: "published", publisher: "Concrete Construction magazine", title: "Thermal coefficients of concretes", edition: "date not known", locator: "table by aggregate" } as const satisfies Basis;
const mortarTable = { kind: "published", publisher: "W. H. Dooley", title: "Applied Science for Metal Workers", edition: "1919", locator: "table of expansion" } as const satisfies Basis;
const bricks = {
  kind: "published",
  publisher: "Conspectus",
  title: "Brick movement joints; and Cornell University, ARCH 262",
  edition: "2011; 2001 to 2004",
  locator: "coefficient in the worked cases",
  says: "4.0 and 3.6 millionths to the degree Fahrenheit",
} as const satisfies Basis;

/** Coefficients of expansion by material, least and most. */
export const expansionTable = {
  "clay brick": { low: "3.6e-6 /degF", high: "4.0e-6 /degF", basis: bricks },
  "cement mortar": { low: "6.56e-6 /degF", high: "6.56e-6 /degF", basis: mortarTable },
  "concrete of basalt": { low: "4.8e-6 /degF", high: "4.8e-6 /degF", basis: concretes },
  "concrete of gravel": { low: "6.0e-6 /degF", high: "6.0e-6 /degF", basis: concretes },
  "concrete of sandstone": { low: "6.5e-6 /degF", high: "6.5e-6 /degF", basis: concretes },
  "concrete, aggregate not known": { low: "4.8e-6 /degF", high: "6.5e-6 /degF", basis: concretes },
} as const;
