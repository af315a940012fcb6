// What can be and what cannot. Faces, packs and loads have a size; what is added or taken off may be nought; a pack holds
// whole pieces, one at the least; prices may be nought, the smallest amount may not.
import { describe } from "vitest";
import { backingFace } from "../../src/takeoff/backing-face.js";
import { columnFaces } from "../../src/takeoff/column-faces.js";
import { cornerPacks } from "../../src/takeoff/corner-packs.js";
import { courseHeight } from "../../src/takeoff/course-height.js";
import { deliveredWeight } from "../../src/takeoff/delivered-weight.js";
import { edgeBacking } from "../../src/takeoff/edge-backing.js";
import { faceGrowth } from "../../src/takeoff/face-growth.js";
import { faceLoss } from "../../src/takeoff/face-loss.js";
import { fastenersByArea } from "../../src/takeoff/fasteners-by-area.js";
import { hoistTrips } from "../../src/takeoff/hoist-trips.js";
import { labourHours } from "../../src/takeoff/labour-hours.js";
import { lathSheets } from "../../src/takeoff/lath-sheets.js";
import { linePrice } from "../../src/takeoff/line-price.js";
import { overrunLength } from "../../src/takeoff/overrun-length.js";
import { returnCornerCover } from "../../src/takeoff/return-corner-cover.js";
import { shareOfPrice } from "../../src/takeoff/share-of-price.js";
import { soffitFace } from "../../src/takeoff/soffit-face.js";
import { spareUnits } from "../../src/takeoff/spare-units.js";
import { stoneFace } from "../../src/takeoff/stone-face.js";
import { unitsPlaced } from "../../src/takeoff/units-placed.js";
import { wallCornerCover } from "../../src/takeoff/wall-corner-cover.js";
import { itHoldsTheLimits } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(backingFace, { walls: "above 0 ft2", openings: "from 0 ft2", soffits: "from 0 ft2", growth: "from 0 ft2", loss: "from 0 ft2" });
  itHoldsTheLimits(columnFaces, { width: "above 0 ft", depth: "above 0 ft", height: "above 0 ft" });
  itHoldsTheLimits(cornerPacks, { withWaste: "from 0", packCount: "from 1, whole" });
  itHoldsTheLimits(courseHeight, { unitHeight: "above 0 in", bedJoint: "from 0 in, usually 3/8 in" });
  itHoldsTheLimits(deliveredWeight, { packs: "from 0", packMass: "above 0 lb" });
  itHoldsTheLimits(edgeBacking, { boards: "above 0", backing: "above 0 ft" });
  itHoldsTheLimits(faceGrowth, { edgeFaces: "from 0 ft", unitThickness: "above 0 in", bed: "from 0 in" });
  itHoldsTheLimits(faceLoss, { insideFaces: "from 0 ft", unitThickness: "above 0 in", bed: "from 0 in" });
  itHoldsTheLimits(fastenersByArea, { area: "above 0 ft2", fastenersPerArea: "above 0 /ft2", waste: "from 0 %, below 100 %", packCount: "from 1" });
  itHoldsTheLimits(hoistTrips, { packs: "above 0", packMass: "above 0 lb", hoistLoad: "above 0 lb" });
  itHoldsTheLimits(labourHours, { work: "from 0 %", hoursPer: "above 0 h", efficiency: "above 0 %, to 100 %" });
  itHoldsTheLimits(lathSheets, { area: "above 0 ft2", sheetWidth: "above 0 in", sheetLength: "above 0 ft", sideLap: "from 0 in", endLap: "from 0 in", waste: "from 0 %, below 100 %" });
  itHoldsTheLimits(linePrice, { packs: "from 0", packPrice: "from 0 %", markup: "from 0 %", smallest: "above 0 %" });
  itHoldsTheLimits(overrunLength, { length: "above 0 ft", ends: "above 0", beyond: "from 0 in" });
  itHoldsTheLimits(returnCornerCover, { edgeHeight: "above 0 ft", longLeg: "above 0 in", shortLeg: "above 0 in", returnDepth: "above 0 in" });
  itHoldsTheLimits(shareOfPrice, { lines: "from 0 %", share: "from 0 %", smallest: "above 0 %" });
  itHoldsTheLimits(soffitFace, { length: "above 0 ft", depth: "above 0 ft" });
  itHoldsTheLimits(spareUnits, { pieces: "above 0", spareShare: "above 0 %, below 100 %", packCount: "from 1" });
  itHoldsTheLimits(stoneFace, { walls: "above 0 ft2", openings: "from 0 ft2", soffits: "from 0 ft2", returns: "from 0 ft2", turned: "from 0 ft2", growth: "from 0 ft2", loss: "from 0 ft2" });
  itHoldsTheLimits(unitsPlaced, { flats: "from 0", corners: "from 0" });
  itHoldsTheLimits(wallCornerCover, { edgeHeight: "from 0 ft", longLeg: "above 0 in", shortLeg: "above 0 in" });
});
