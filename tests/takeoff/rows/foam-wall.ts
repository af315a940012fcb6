// A small wall of foam board and stone for the tests of rows. Per ft2 it takes 1/32 board of 4 ft by 8 ft, half a fastener,
// 3 flats of 12 in by 4 in with their joints, and 6 spacers, of which 4 in 10 are bought.
import { type Assembly, assemblySchema, type ReadAssembly } from "../../../src/takeoff/job.js";
import type { WallPattern } from "../../../src/takeoff/rows/fill-wall.js";
import { nested } from "../../../src/schema/nested.js";

export const foamAssembly: Assembly = {
  measuredTo: "backing",
  layers: [
    { kind: "foam board", name: "foam", boardWidth: "4 ft", boardHeight: "8 ft", fastenersPerArea: "0.5 /ft2" },
    { kind: "units", name: "flats", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", unitThickness: "1 in", headJoint: "3/8 in", bedJoint: "3/8 in", spacers: { name: "spacers", perUnit: 2, reuseShare: "60 %" } },
  ],
  packs: { "foam fasteners": { pieces: 50 }, flats: { pieces: 40 }, "what no wall here uses": { pieces: 3 } },
  allowances: { foam: { waste: "10 %" }, "foam fasteners": { waste: "10 %" }, flats: { waste: "0 %" } },
  prices: { smallest: "0.01 USD", items: { foam: { each: "20 USD" }, flats: { perPack: "30 USD" } } },
};

const read = nested(assemblySchema)["~standard"].validate(foamAssembly);
if (read instanceof Promise || read.issues !== undefined) throw new Error("the assembly can be read");

/** The same as it is read. */
export const foamAssemblyRead: ReadAssembly = read.value;

export const foamWall: WallPattern = { name: { column: "wall" }, shape: { kind: "rectangle", width: { column: "width" }, height: { column: "height" } }, openings: [], outsideCorners: [] };
