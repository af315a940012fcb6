import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { openingShapeInput } from "../shapes/opening-shape.js";
import { wallShapeInput } from "../shapes/wall-shape.js";

/** What all layers on a wall have in common. */
const wallFields = /* @__PURE__ */ atFirstUse(() => ({
  wall: telling("wall the boards go on", wallShapeInput()),
  /** Each with its place: the box round it from the left end and the foot of the wall. */
  openings: telling("openings in the wall, each with its place", z.array(
    z.strictObject({
      shape: telling("shape of the opening", openingShapeInput()),
      left: quantityField("length", { says: "from the left end of the wall to the opening", atLeast: 0 }),
      bottom: quantityField("length", { says: "from the foot of the wall to the opening", atLeast: 0 }),
    }),
  )),
  studs: telling("studs of the wall", z.strictObject({
    spacing: quantityField("length", { says: "spacing of the studs, centre to centre", above: 0 }),
    start: quantityField("length", { says: "from the left end of the wall to the first stud of the spacing", atLeast: 0 }),
  })),
  edgesBacked: telling("whether an upright joint between two studs gets backing of its own", z.boolean()),
  reuseOffcuts: telling("whether what is left of one board is used in another place", z.boolean()),
}));

/** What each layer has of its own. */
const layerFields = /* @__PURE__ */ atFirstUse(() => ({
  board: telling("board by its sides", z.strictObject({
    width: quantityField("length", { says: "short side of the board", above: 0 }),
    length: quantityField("length", { says: "long side of the board", above: 0 }),
  })),
  /** `"flat"`: the long side level, in level courses; `"upright"`: the long side upright, in upright courses. */
  orientation: telling("whether the long side of the board lies level or stands upright", z.enum(["flat", "upright"])),
  stagger: quantityField("length", { says: "shift of the end joints from one course to the next; nought where they run through", atLeast: 0 }),
  start: z.optional(
    telling("where the first whole board begins", z.strictObject({
      across: quantityField("length", { says: "from the left end of the wall to the first whole board", atLeast: 0 }),
      up: quantityField("length", { says: "from the foot of the wall to the first whole board", atLeast: 0 }),
    })),
  ),
  screws: z.optional(
    telling("screws, where they are to be counted", z.strictObject({
      spacing: quantityField("length", { says: "greatest spacing of screws along a stud", above: 0 }),
      edgeDistance: z.optional(quantityField("length", { says: "distance of screws from the edges and ends of a board", above: 0 })),
    })),
  ),
}));

/** What the layout of boards is given. */
export const layoutInput = /* @__PURE__ */ atFirstUse(() => z.strictObject({ ...wallFields(), ...layerFields() }));

/** What the layout of boards is given, as it has been read. */
export type ReadLayout = z.output<ReturnType<typeof layoutInput>>;

/** What the layout of boards in layers is given. */
export const layersInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    ...wallFields(),
    layers: telling("layers of boards, from the studs outward", z.array(z.strictObject(layerFields()))),
    leastOffset: quantityField("length", { says: "least distance of a joint from one that runs the same way in the layer behind; commonly a stud spacing", above: 0 }),
    leastScrewOffset: z.optional(quantityField("length", { says: "least distance of a screw from one of the layer behind, centre to centre; where it is left out, only screws right over one are counted", above: 0 })),
  }));

/** What the layout of boards in layers is given, as it has been read. */
export type ReadLayers = z.output<ReturnType<typeof layersInput>>;
