// What can be and what cannot, from what the things are: what is filled, cut or bought has a size; a joint, a bed or mortar
// pressed out may be nought; waste below nought would be a gain, and at the whole would need no order of anything else; who
// strikes is at least one person. Joints of 3/8 in and rods a quarter thicker are common practice;
// layers of 1/4 in are the US National Park Service's (Preservation Brief 2).
import { describe } from "vitest";
import { backerRodSize } from "../../src/joints/backer-rod-size.js";
import { concaveLoss } from "../../src/joints/concave-loss.js";
import { coursedFace } from "../../src/joints/coursed-face.js";
import { faceShare } from "../../src/joints/face-share.js";
import { jointByLength } from "../../src/joints/joint-by-length.js";
import { jointDrift } from "../../src/joints/joint-drift.js";
import { mortarJointLength } from "../../src/joints/mortar-joint-length.js";
import { pointingDepth } from "../../src/joints/pointing-depth.js";
import { pointingFills } from "../../src/joints/pointing-fills.js";
import { pointingOrder } from "../../src/joints/pointing-order.js";
import { pointingRound } from "../../src/joints/pointing-round.js";
import { rakedLoss } from "../../src/joints/raked-loss.js";
import { repointingDepth } from "../../src/joints/repointing-depth.js";
import { repointingLayers } from "../../src/joints/repointing-layers.js";
import { roundLength } from "../../src/joints/round-length.js";
import { sealantOrder } from "../../src/joints/sealant-order.js";
import { spacerCount } from "../../src/joints/spacer-count.js";
import { tooledJoint } from "../../src/joints/tooled-joint.js";
import { toolingLoss } from "../../src/joints/tooling-loss.js";
import { vLoss } from "../../src/joints/v-loss.js";
import { weatheredLoss } from "../../src/joints/weathered-loss.js";
import { mixedFace } from "../../src/joints/mixed-face.js";
import { pointingMortar } from "../../src/joints/pointing-mortar.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(backerRodSize, { width: "above 0 in", oversize: "above 0 %, to 100 %, usually 25 %", sizeStep: "above 0 in, usually 1/8 in" });
  itHoldsTheLimits(concaveLoss, { width: "above 0 in", toolRadius: "above 0 in", depth: "above 0 in" });
  itHoldsTheLimits(coursedFace, { area: "above 0 ft2", unitLength: "above 0 in", unitHeight: "above 0 in", headJoint: "from 0 in, usually 3/8 in", bedJoint: "from 0 in, usually 3/8 in", depth: "above 0 in" });
  itHoldsTheLimits(faceShare, { area: "above 0 ft2", share: "above 0 %, to 100 %" });
  itHoldsTheLimits(jointByLength, { length: "above 0 ft", width: "above 0 in", depth: "above 0 in" });
  itHoldsTheLimits(jointDrift, { taped: "above 0 in", unitsTotal: "above 0 in", joints: "from 1, whole", jointWanted: "from 0 in", jointsToGo: "from 0, whole" });
  itHoldsTheLimits(mortarJointLength, { unitLength: "above 0 in", unitHeight: "above 0 in", headJoint: "from 0 in, usually 3/8 in", bedJoint: "from 0 in, usually 3/8 in" });
  itHoldsTheLimits(pointingDepth, { unitThickness: "above 0 in", bed: "from 0 in", squeezeOut: "from 0 in" });
  itHoldsTheLimits(pointingFills, { volume: "above 0 ft3", pointingBag: "above 0 qt" });
  itHoldsTheLimits(pointingOrder, { net: "above 0 ft3", waste: "from 0 %, below 100 %", bagYield: "above 0 ft3" });
  itHoldsTheLimits(pointingRound, { toolingRate: "above 0 ft/h", toolers: "from 1, whole", window: "above 0 min", totalLength: "above 0 ft", width: "above 0 in", depth: "above 0 in" });
  itHoldsTheLimits(rakedLoss, { width: "above 0 in", profileDepth: "above 0 in", depth: "above 0 in" });
  itHoldsTheLimits(repointingDepth, { width: "above 0 in" });
  itHoldsTheLimits(repointingLayers, { depth: "above 0 in", layer: "above 0 in, usually 1/4 in" });
  itHoldsTheLimits(roundLength, { toolingRate: "above 0 ft/h", toolers: "from 1, whole", window: "above 0 min", totalLength: "above 0 ft" });
  itHoldsTheLimits(sealantOrder, { length: "above 0 ft", width: "above 0 in", waste: "from 0 %, below 100 %", tube: "above 0 floz" });
  itHoldsTheLimits(spacerCount, { units: "above 0", spacersPerUnit: "above 0", reuseShare: "from 0 %, below 100 %" });
  itHoldsTheLimits(tooledJoint, { volume: "from 0 ft3", toolingShare: "from 0 %, below 100 %" });
  itHoldsTheLimits(toolingLoss, { width: "above 0 in", depth: "above 0 in", toolRadius: "above 0 in", profileDepth: "above 0 in" });
  itHoldsTheLimits(vLoss, { width: "above 0 in", profileDepth: "above 0 in", depth: "above 0 in" });
  itHoldsTheLimits(weatheredLoss, { width: "above 0 in", profileDepth: "above 0 in", depth: "above 0 in" });

  const face = { area: "200 ft2", headJoint: "3/8 in", bedJoint: "3/8 in" } as const;
  const sizes = [{ unitLength: "15-5/8 in", unitHeight: "7-5/8 in", share: "60 %" }, { unitLength: "7-5/8 in", unitHeight: "3-5/8 in", share: "40 %" }] as const;
  const joints = { "face.area": "above 0 ft2", "face.headJoint": "above 0 in", "face.bedJoint": "above 0 in" };
  itHoldsTheLimitsIn(mixedFace, "sizes", { ...face, sizes, depth: "3/4 in" }, {
    area: "above 0 ft2", headJoint: "above 0 in", bedJoint: "above 0 in", depth: "above 0 in",
    "sizes.1.unitLength": "above 0 in", "sizes.1.unitHeight": "above 0 in", "sizes.1.share": "above 0 %, to 100 %",
  });
  const coursed = {
    face: { pattern: "coursed", ...face, unitLength: "11-5/8 in", unitHeight: "3-5/8 in" },
    depth: { from: "unit and bed", unitThickness: "1-1/4 in", bed: "1/2 in", squeezeOut: "1 in" },
    tooling: { profile: "raked", profileDepth: "3/16 in" },
    waste: "20 %", bagYield: "0.5 ft3", pointingBag: "2 qt",
  };
  itHoldsTheLimitsIn(pointingMortar, "a coursed face, its depth from unit and bed", coursed, {
    ...joints, "face.unitLength": "above 0 in", "face.unitHeight": "above 0 in",
    "depth.unitThickness": "above 0 in", "depth.bed": "from 0 in", "depth.squeezeOut": "from 0 in", "tooling.profileDepth": "above 0 in",
    waste: "from 0 %, below 100 %", bagYield: "above 0 ft3", pointingBag: "above 0 qt",
  });
  itHoldsTheLimitsIn(pointingMortar, "several sizes, an open joint and a round tool", { ...coursed, face: { pattern: "mixed", ...face, sizes }, depth: { from: "open joints", depth: "3/4 in" }, tooling: { profile: "concave", toolRadius: "3/8 in" } }, {
    ...joints, "face.sizes.0.share": "above 0 %, to 100 %", "depth.depth": "above 0 in", "tooling.toolRadius": "above 0 in",
  });
  itHoldsTheLimitsIn(pointingMortar, "irregular stone", { ...coursed, face: { pattern: "irregular", length: "1000 ft", width: "1/2 in" } }, { "face.length": "above 0 ft", "face.width": "above 0 in" });
});
