import * as z from "zod/mini";
import { tooling } from "../joints/face-fields.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { nameField, quantityField, telling } from "../schema/fields.js";
import { length } from "./job-elevation.js";

/** What every layer may say of itself: its weight, for the check of the weight of the assembly. */
const weight = /* @__PURE__ */ atFirstUse(() => ({ weightPerArea: z.optional(quantityField("arealMass", { says: "weight of the layer as installed", above: 0 })) }));

const lap = (says: string): ReturnType<typeof quantityField<"length">> => quantityField("length", { says, atLeast: 0 });

/** Fasteners of a layer that is not laid out board by board. */
const fasteners = /* @__PURE__ */ atFirstUse(() => z.optional(quantityField("countPerArea", { says: "fasteners per area", above: 0 })));

/** Framing studs, which all boards are screwed to. */
const studs = /* @__PURE__ */ atFirstUse(() => z.strictObject({ kind: z.literal("studs"), spacing: length("spacing of the studs, centre to centre") }));

/** A wall of masonry or concrete in the place of studs: it takes no boards, and no screws into steel. */
const masonryBacking = /* @__PURE__ */ atFirstUse(() => z.strictObject({ kind: z.literal("masonry backing") }));

/** One layer of boards, screwed to the studs. */
const boards = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    kind: z.literal("boards"),
    name: telling("name of the layer", nameField()),
    acrossStuds: length("board dimension across the studs"),
    alongStuds: length("board dimension along the studs"),
    edgesBacked: telling("whether an edge between studs gets backing of its own", z.boolean()),
    screwSpacing: length("greatest spacing of screws along a stud"),
    edgeDistance: z.optional(length("distance of the first and last screw of a line from the end of the board")),
    ...weight(),
  }));

/** Boards of foam, by area, with fasteners by area where they have any. */
const foamBoard = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({ kind: z.literal("foam board"), name: telling("name of the layer", nameField()), boardWidth: length("width of a board"), boardHeight: length("height of a board"), fastenersPerArea: fasteners(), ...weight() }));

/** Goods from a roll that are laid level and lapped: building paper, a drainage mat. */
const sheetGoods = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    kind: z.literal("sheet goods"),
    name: telling("name of the layer", nameField()),
    sheetWidth: length("width of the sheet"),
    sideLap: lap("lap of a course over the one below"),
    endLap: lap("lap of a roll over the one before it"),
    fastenersPerArea: fasteners(),
    ...weight(),
  }));

/** Sheets of lath, lapped at their sides and ends. */
const lath = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    kind: z.literal("lath"),
    name: telling("name of the layer", nameField()),
    sheetWidth: length("width of a sheet of lath"),
    sheetLength: length("length of a sheet of lath"),
    sideLap: lap("lap at the sides"),
    endLap: lap("lap at the ends"),
    fastenersPerArea: fasteners(),
    ...weight(),
  }));

/** A coat of mortar over lath or masonry, which is left to set before the bed goes on. */
const scratchCoat = /* @__PURE__ */ atFirstUse(() => z.strictObject({ kind: z.literal("scratch coat"), name: telling("name of the layer", nameField()), thickness: length("mean thickness of the coat"), ...weight() }));

/** Tape over the joints of one layer of boards. */
const jointTape = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    kind: z.literal("joint tape"),
    name: telling("name of the layer", nameField()),
    over: telling("layer of boards whose joints are taped", nameField()),
    overlaps: quantityField("count", { says: "places where one length of tape laps over another", atLeast: 0 }),
    overlap: z.optional(lap("lap of one length of tape over another")),
    ...weight(),
  }));

/** A liquid barrier in coats. */
const barrier = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    kind: z.literal("barrier"),
    name: telling("name of the layer", nameField()),
    wetFilm: length("wet film of one coat"),
    coats: quantityField("count", { says: "coats", atLeast: "1", whole: true }),
    deductFrom: z.optional(quantityField("area", { says: "size from which an opening is deducted", atLeast: 0 })),
    ...weight(),
  }));

/** The board at the foot of the wall on which the first course stands. */
const ledger = /* @__PURE__ */ atFirstUse(() => z.strictObject({ kind: z.literal("ledger"), name: telling("name of the layer", nameField()), lap: z.optional(lap("lap of one piece over the next")), ...weight() }));

/** Pieces that run along edges and are bought by length: sills, caps, screeds, flashings, casing beads. */
const trim = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    kind: z.literal("trim"),
    name: telling("name of the layer", nameField()),
    along: telling("edges along which it runs", z.array(z.enum(["base", "sills", "jambs", "heads", "round openings", "caps", "outside corners", "inside corners", "soffits"]))),
    beyond: z.optional(lap("how far it goes past each end of a sill or a head")),
    lap: lap("lap of one piece over the next; 0 in where they butt"),
    ...weight(),
  }));

/** Joints that are left open for movement and sealed over a backer rod, never pointed. */
const movementJoints = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    kind: z.literal("movement joints"),
    name: telling("name of the layer", nameField()),
    length: quantityField("length", { says: "movement joints besides those at inside corners", atLeast: 0 }),
    insideCorners: telling("whether the inside corners are movement joints", z.boolean()),
    width: length("width of the movement joints"),
    backerRod: z.optional(telling("name of the backer rod", nameField())),
  }));

/** The mortar units are set in: its bed on the wall, by thickness or by trowel, and what is put on the backs of the units. */
const settingBed = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    kind: z.literal("setting bed"),
    name: telling("name of the layer", nameField()),
    bed: telling("bed on the wall", z.discriminatedUnion("from", [
      z.strictObject({ from: z.literal("thickness"), thickness: length("mean thickness of the bed on the wall") }),
      z.strictObject({
        from: z.literal("trowel"),
        notch: telling("shape of the notch", z.enum(["square", "u", "v"])),
        depth: length("depth of the notch"),
        width: length("width of the notch at its mouth"),
        tooth: quantityField("length", { says: "width of the tooth between two notches", atLeast: 0 }),
        angle: quantityField("angle", { says: "angle between trowel and wall", atLeast: "30 deg", atMost: "90 deg" }),
      }),
    ])),
    backButter: quantityField("length", { says: "mean thickness of the coat on the backs of the units", atLeast: 0 }),
    butteredShare: quantityField("ratio", { says: "share of the face that is back-buttered", atLeast: 0, atMost: 1 }),
    ...weight(),
  }));

/** The units: flats and corners, in level courses; with several elevations, whether packs are rounded up for each. */
const units = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    kind: z.literal("units"),
    name: telling("name of the layer", nameField()),
    unitLength: length("actual face length of one unit"),
    unitHeight: length("actual face height of one unit"),
    unitThickness: length("mean thickness of the units at their edges"),
    headJoint: z.optional(quantityField("length", { says: "width of the upright joints", atLeast: 0 })),
    bedJoint: z.optional(quantityField("length", { says: "width of the level joints", atLeast: 0 })),
    lots: z.optional(telling("whether packs are rounded up by elevation or together", z.enum(["by elevation", "together"]))),
    corners: z.optional(
      telling("corner units", z.strictObject({
        name: telling("name of the corner units", nameField()),
        longLeg: length("long leg of a corner unit, measured on its face"),
        shortLeg: length("short leg of a corner unit, measured on its face"),
      })),
    ),
    spacers: z.optional(
      telling("spacers between the units", z.strictObject({
        name: telling("name of the spacers", nameField()),
        perUnit: quantityField("count", { says: "spacers set for each unit", above: 0 }),
        reuseShare: quantityField("ratio", { says: "share of the spacers that is pulled and set again", atLeast: 0, below: 1 }),
      })),
    ),
    ...weight(),
  }));

/** The mortar in the joints between the units. */
const joints = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    kind: z.literal("joints"),
    name: telling("name of the layer", nameField()),
    squeezeOut: quantityField("length", { says: "depth of joint filled by mortar pressed out of the bed, from the wall out", atLeast: 0 }),
    tooling: telling("how the joints are tooled", tooling()),
    ...weight(),
  }));

/** One layer of the assembly; a job lists them in order, from what carries the wall outwards. */
export const layer = /* @__PURE__ */ atFirstUse(() =>
  z.discriminatedUnion("kind", [
    studs(), masonryBacking(), boards(), foamBoard(), sheetGoods(), lath(), scratchCoat(), jointTape(), barrier(), ledger(), trim(), movementJoints(), settingBed(), units(), joints(),
  ]));
