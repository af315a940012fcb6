import * as z from "zod/mini";
import { tooling } from "../joints/face-fields.js";
import { quantityField } from "../schema/fields.js";
import { howMany } from "../shapes/how-many.js";
import { openingShape } from "../shapes/opening-shape.js";
import { wallShape } from "../shapes/wall-shape.js";

/** A length above nought. */
const length = (says: string): ReturnType<typeof quantityField<"length">> => quantityField("length", { says, above: 0 });

/** An opening, and how the stone turns into it. */
const opening = /* @__PURE__ */ (() =>
  z.strictObject({
    name: z.optional(z.string()),
    shape: openingShape,
    count: howMany,
    returnDepth: quantityField("length", { says: "how far the face turns into the opening; 0 in where it stops at its edge", atLeast: 0 }),
    returnUnits: z.enum(["corner", "flat"]),
    toBase: z.optional(z.boolean()),
  }))();

/** One outside corner, listed once: its height, and whether the face round it is one of this job's elevations. */
const outsideCorner = /* @__PURE__ */ (() =>
  z.strictObject({ height: length("height of the outside corner"), otherFace: z.enum(["elevation", "unclad"]), count: howMany }))();

const elevation = /* @__PURE__ */ (() =>
  z.strictObject({ name: z.string(), shape: wallShape, openings: z.array(opening), outsideCorners: z.array(outsideCorner) }))();

/** Framing studs, which all boards are screwed to. */
const studs = /* @__PURE__ */ (() => z.strictObject({ kind: z.literal("studs"), spacing: length("spacing of the studs, centre to centre") }))();

/** One layer of boards, screwed to the studs. */
const boards = /* @__PURE__ */ (() =>
  z.strictObject({
    kind: z.literal("boards"),
    name: z.string(),
    acrossStuds: length("board dimension across the studs"),
    alongStuds: length("board dimension along the studs"),
    edgesBacked: z.boolean(),
    screwSpacing: length("greatest spacing of screws along a stud"),
    edgeDistance: z.optional(length("distance of the first and last screw of a line from the end of the board")),
  }))();

/** Tape over the joints of one layer of boards. */
const jointTape = /* @__PURE__ */ (() =>
  z.strictObject({
    kind: z.literal("joint tape"),
    name: z.string(),
    over: z.string(),
    overlaps: quantityField("count", { says: "places where one length of tape laps over another", atLeast: 0 }),
    overlap: z.optional(quantityField("length", { says: "lap of one length of tape over another", atLeast: 0 })),
  }))();

/** A liquid barrier in coats. */
const barrier = /* @__PURE__ */ (() =>
  z.strictObject({
    kind: z.literal("barrier"),
    name: z.string(),
    wetFilm: length("wet film of one coat"),
    coats: quantityField("count", { says: "coats", atLeast: "1", whole: true }),
    deductFrom: z.optional(quantityField("area", { says: "size from which an opening is deducted", atLeast: 0 })),
  }))();

/** The board at the foot of the wall on which the first course stands. */
const ledger = /* @__PURE__ */ (() =>
  z.strictObject({ kind: z.literal("ledger"), name: z.string(), lap: z.optional(quantityField("length", { says: "lap of one piece over the next", atLeast: 0 })) }))();

/** The mortar units are set in: its bed on the wall, by thickness or by trowel, and what is put on the backs of the units. */
const settingBed = /* @__PURE__ */ (() =>
  z.strictObject({
    kind: z.literal("setting bed"),
    name: z.string(),
    bed: z.discriminatedUnion("from", [
      z.strictObject({ from: z.literal("thickness"), thickness: length("mean thickness of the bed on the wall") }),
      z.strictObject({
        from: z.literal("trowel"),
        notch: z.enum(["square", "u", "v"]),
        depth: length("depth of the notch"),
        width: length("width of the notch at its mouth"),
        tooth: quantityField("length", { says: "width of the tooth between two notches", atLeast: 0 }),
        angle: quantityField("angle", { says: "angle between trowel and wall", atLeast: "30 deg", atMost: "90 deg" }),
      }),
    ]),
    backButter: quantityField("length", { says: "mean thickness of the coat on the backs of the units", atLeast: 0 }),
    butteredShare: quantityField("ratio", { says: "share of the face that is back-buttered", atLeast: 0, atMost: 1 }),
  }))();

/** The units: flats and corners, in level courses. */
const units = /* @__PURE__ */ (() =>
  z.strictObject({
    kind: z.literal("units"),
    name: z.string(),
    unitLength: length("actual face length of one unit"),
    unitHeight: length("actual face height of one unit"),
    unitThickness: length("mean thickness of the units at their edges"),
    headJoint: z.optional(length("width of the upright joints")),
    bedJoint: z.optional(length("width of the level joints")),
    corners: z.optional(
      z.strictObject({
        name: z.string(),
        longLeg: length("long leg of a corner unit, measured on its face"),
        shortLeg: length("short leg of a corner unit, measured on its face"),
      }),
    ),
    spacers: z.optional(
      z.strictObject({
        name: z.string(),
        perUnit: quantityField("count", { says: "spacers set for each unit", above: 0 }),
        reuseShare: quantityField("ratio", { says: "share of the spacers that is pulled and set again", atLeast: 0, below: 1 }),
      }),
    ),
  }))();

/** The mortar in the joints between the units. */
const joints = /* @__PURE__ */ (() =>
  z.strictObject({
    kind: z.literal("joints"),
    name: z.string(),
    squeezeOut: quantityField("length", { says: "depth of joint filled by mortar pressed out of the bed, from the wall out", atLeast: 0 }),
    tooling,
  }))();

/** How an item is sold: so many pieces, a length, a volume, or a bag with what its sheet says; each item wants its own. */
const pack = /* @__PURE__ */ (() =>
  z.strictObject({
    pieces: z.optional(quantityField("count", { says: "pieces in a pack", atLeast: "1" })),
    length: z.optional(length("length of a piece or roll")),
    volume: z.optional(quantityField("volume", { says: "volume of a pack", above: 0 })),
    bag: z.optional(quantityField("mass", { says: "dry mix in a full bag", above: 0 })),
    yield: z.optional(quantityField("volume", { says: "mortar that one bag gives", above: 0 })),
    waterLow: z.optional(quantityField("volume", { says: "least water for a full bag, from the bag", above: 0 })),
    waterHigh: z.optional(quantityField("volume", { says: "most water for a full bag, from the bag", above: 0 })),
  }))();

/** What is added for what never ends on the wall: on top of the net, or as a share of what is bought; never both. */
const allowance = /* @__PURE__ */ (() =>
  z.strictObject({
    waste: z.optional(quantityField("ratio", { says: "waste, on top of the net", atLeast: 0, below: 1 })),
    lossShare: z.optional(quantityField("ratio", { says: "share of what is bought that never ends on the wall", atLeast: 0, below: 1 })),
  }))();

/**
 * A job as nested input: its elevations, the layers of the wall in order from the studs out, how each item is sold and
 * what is added for waste, both by the name of the item.
 */
export const jobSchema = /* @__PURE__ */ (() =>
  z.strictObject({
    name: z.optional(z.string()),
    measuredTo: z.enum(["backing", "stoneFace"]),
    elevations: z.array(elevation),
    layers: z.array(z.discriminatedUnion("kind", [studs, boards, jointTape, barrier, ledger, settingBed, units, joints])),
    packs: z.record(z.string(), pack),
    allowances: z.record(z.string(), allowance),
  }))();

/** A job as one writes it; its quantities are texts or quantities, so that a JSON import compiles. */
export type Job = z.input<typeof jobSchema>;

/** A job as it has been read. */
export type ReadJob = z.output<typeof jobSchema>;

/** One layer of a job as it has been read. */
export type Layer = ReadJob["layers"][number];

/** A layer of one kind. */
export type LayerOf<Kind extends Layer["kind"]> = Extract<Layer, { readonly kind: Kind }>;
