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
import { lathSheets } from "../../src/takeoff/lath-sheets.js";
import { linePrice } from "../../src/takeoff/line-price.js";
import { overrunLength } from "../../src/takeoff/overrun-length.js";
import { paidHours } from "../../src/takeoff/paid-hours.js";
import { returnCornerCover } from "../../src/takeoff/return-corner-cover.js";
import { shareOfPrice } from "../../src/takeoff/share-of-price.js";
import { soffitFace } from "../../src/takeoff/soffit-face.js";
import { spareUnits } from "../../src/takeoff/spare-units.js";
import { stoneFace } from "../../src/takeoff/stone-face.js";
import { unitsPlaced } from "../../src/takeoff/units-placed.js";
import { wallCornerCover } from "../../src/takeoff/wall-corner-cover.js";
import { takeOff } from "../../src/takeoff/take-off.js";
import { unitsByElevation } from "../../src/takeoff/units-by-elevation.js";
import { entranceInFeet } from "./entrance-job.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(backingFace, { walls: "above 0 ft2", openings: "from 0 ft2", soffits: "from 0 ft2", growth: "from 0 ft2", loss: "from 0 ft2" });
  itHoldsTheLimits(columnFaces, { width: "above 0 ft", depth: "above 0 ft", height: "above 0 ft" });
  itHoldsTheLimits(cornerPacks, { withWaste: "from 0", packCount: "from 1, whole" });
  itHoldsTheLimits(courseHeight, { unitHeight: "above 0 in", bedJoint: "from 0 in, usually 3/8 in" });
  itHoldsTheLimits(deliveredWeight, { packs: "from 0, whole", packMass: "above 0 lb" });
  itHoldsTheLimits(edgeBacking, { boards: "above 0", backing: "above 0 ft" });
  itHoldsTheLimits(faceGrowth, { edgeFaces: "from 0 ft", unitThickness: "above 0 in", bed: "from 0 in" });
  itHoldsTheLimits(faceLoss, { insideFaces: "from 0 ft", unitThickness: "above 0 in", bed: "from 0 in" });
  itHoldsTheLimits(fastenersByArea, { area: "above 0 ft2", fastenersPerArea: "above 0 /ft2", waste: "from 0 %, below 100 %", packCount: "from 1, whole" });
  itHoldsTheLimits(hoistTrips, { packs: "from 1, whole", packMass: "above 0 lb", hoistLoad: "above 0 lb" });
  itHoldsTheLimits(lathSheets, { area: "above 0 ft2", sheetWidth: "above 0 in", sheetLength: "above 0 ft", sideLap: "from 0 in", endLap: "from 0 in", waste: "from 0 %, below 100 %" });
  itHoldsTheLimits(linePrice, { packs: "from 0, whole", packPrice: "from 0 %", markup: "from 0 %", smallest: "above 0 %" });
  itHoldsTheLimits(overrunLength, { length: "above 0 ft", ends: "from 1, whole", beyond: "from 0 in" });
  itHoldsTheLimits(paidHours, { toolHours: "from 0 h", efficiency: "above 0 %, to 100 %" });
  itHoldsTheLimits(returnCornerCover, { edgeHeight: "above 0 ft", longLeg: "above 0 in", shortLeg: "above 0 in", returnDepth: "above 0 in" });
  itHoldsTheLimits(shareOfPrice, { lines: "from 0 %", share: "from 0 %", smallest: "above 0 %" });
  itHoldsTheLimits(soffitFace, { length: "above 0 ft", depth: "above 0 ft" });
  itHoldsTheLimits(spareUnits, { pieces: "above 0", spareShare: "above 0 %, below 100 %", packCount: "from 1, whole" });
  itHoldsTheLimits(stoneFace, { walls: "above 0 ft2", openings: "from 0 ft2", soffits: "from 0 ft2", returns: "from 0 ft2", turned: "from 0 ft2", growth: "from 0 ft2", loss: "from 0 ft2" });
  itHoldsTheLimits(unitsPlaced, { flats: "from 0", corners: "from 0" });
  itHoldsTheLimits(wallCornerCover, { edgeHeight: "from 0 ft", longLeg: "above 0 in", shortLeg: "above 0 in" });

  itHoldsTheLimitsIn(unitsByElevation, "an elevation", {
    elevations: [{ name: "south", area: "121 ft2", cornerCover: "0 ft2" }], unitLength: "11-5/8 in", unitHeight: "3-5/8 in", headJoint: "3/8 in", bedJoint: "3/8 in", waste: "0 %", packCount: 30,
  }, {
    "elevations.0.area": "above 0 ft2", "elevations.0.cornerCover": "from 0 ft2", unitLength: "above 0 in", unitHeight: "above 0 in", headJoint: "from 0 in", bedJoint: "from 0 in", waste: "from 0 %, below 100 %", packCount: "from 1, whole",
  });
  const [size, some] = ["above 0 ft", "from 0 in"];
  itHoldsTheLimitsIn(takeOff, "an entrance", entranceInFeet, {
    "elevations.0.openings.0.returnDepth": some, "elevations.0.outsideCorners.0.height": size, "elevations.0.insideCorners.0.height": size, "elevations.0.soffits.0.length": size, "elevations.0.soffits.0.depth": size, "elevations.0.caps.0.length": size,
    "columns.0.width": size, "columns.0.depth": size, "columns.0.height": size,
    "layers.0.spacing": size, "layers.1.acrossStuds": size, "layers.1.alongStuds": size, "layers.1.screwSpacing": size, "layers.1.edgeDistance": size,
    "layers.3.overlaps": "from 0", "layers.3.overlap": some, "layers.4.wetFilm": "above 0 mil", "layers.4.coats": "from 1, whole", "layers.4.deductFrom": "from 0 ft2", "layers.5.lap": some, "layers.6.beyond": some, "layers.6.lap": some,
    "layers.9.bed.thickness": size, "layers.9.backButter": some, "layers.9.butteredShare": "from 0 %, to 100 %",
    "layers.10.unitLength": size, "layers.10.unitHeight": size, "layers.10.unitThickness": size, "layers.10.headJoint": some, "layers.10.bedJoint": some, "layers.10.corners.longLeg": size, "layers.10.corners.shortLeg": size,
    "layers.10.spacers.perUnit": "above 0", "layers.10.spacers.reuseShare": "from 0 %, below 100 %", "layers.11.squeezeOut": some, "layers.12.length": "from 0 ft", "layers.12.width": size,
    "packs.sheathing screws.pieces": "from 1, whole", "packs.ledger.length": size, "packs.barrier.volume": "above 0 gal", "packs.setting mortar.bag": "above 0 lb", "packs.setting mortar.yield": "above 0 ft3",
    "packs.setting mortar.waterLow": "above 0 qt", "packs.setting mortar.waterHigh": "above 0 qt", "allowances.sheathing.waste": "from 0 %, below 100 %", "allowances.barrier.lossShare": "from 0 %, below 100 %",
    "spare.flat units": "above 0 %, below 100 %", "weights.perPack.sheathing": "above 0 lb", "weights.hoistLoad": "above 0 lb", "labour.efficiency": "above 0 %, to 100 %", "labour.tasks.0.hours": "above 0 h", "labour.tasks.0.factor": "above 0 %, to 2000 %",
    "prices.markup": "from 0 %", "prices.tax": "from 0 %", "prices.allowance.share": "from 0 %", "prices.items.setting mortar.markup": "from 0 %",
  });

  const mat = { kind: "sheet goods", name: "mat", sheetWidth: "39 in", sideLap: "3 in", endLap: "4 in", fastenersPerArea: "1.5 /ft2" };
  const layers = [...entranceInFeet.layers.map((layer) => {
    if (layer.kind === "setting bed") return { ...layer, bed: { from: "trowel", notch: "square", depth: "3/8 in", width: "3/8 in", tooth: "3/8 in", angle: "60 deg" } };
    return layer.kind === "units" ? { ...layer, weightPerArea: "12 lb/ft2" } : layer;
  }), mat];
  itHoldsTheLimitsIn(takeOff, "a bed by the trowel, a mat and the weight of the units", {
    ...entranceInFeet, layers, checks: { weight: { layers: ["flat units"], most: "15 lb/ft2" } },
    packs: { ...entranceInFeet.packs, mat: { length: "50 ft" }, "mat fasteners": { pieces: 100 } }, allowances: { ...entranceInFeet.allowances, mat: { waste: "5 %" }, "mat fasteners": { waste: "5 %" } },
  }, {
    "layers.9.bed.depth": size, "layers.9.bed.width": size, "layers.9.bed.tooth": some, "layers.9.bed.angle": "from 30 deg, to 90 deg", "layers.10.weightPerArea": "above 0 lb/ft2",
    "layers.13.sheetWidth": size, "layers.13.sideLap": some, "layers.13.endLap": some, "layers.13.fastenersPerArea": "above 0 /ft2", "checks.weight.most": "above 0 lb/ft2",
  });
});
