// What can be and what cannot. Units, courses, runs and ledgers have a size; joints, clearances and falls may be nought; an
// error goes either way. Batch and cure hold from 40 to 120 degF, our decision.
import { describe } from "vitest";
import { baseMove } from "../../src/layout/base-move.js";
import { bondShift } from "../../src/layout/bond-shift.js";
import { cornerLead } from "../../src/layout/corner-lead.js";
import { cornerUnits } from "../../src/layout/corner-units.js";
import { cutInRun } from "../../src/layout/cut-in-run.js";
import { cutUnits } from "../../src/layout/cut-units.js";
import { errorPerJoint } from "../../src/layout/error-per-joint.js";
import { halfUnit } from "../../src/layout/half-unit.js";
import { jointBedToBed } from "../../src/layout/joint-bed-to-bed.js";
import { jointForCut } from "../../src/layout/joint-for-cut.js";
import { jointInOpening } from "../../src/layout/joint-in-opening.js";
import { jointUnitToUnit } from "../../src/layout/joint-unit-to-unit.js";
import { leadGap } from "../../src/layout/lead-gap.js";
import { ledgerHeight } from "../../src/layout/ledger-height.js";
import { ledgerLine } from "../../src/layout/ledger-line.js";
import { ledgerScrews } from "../../src/layout/ledger-screws.js";
import { lotsForArea } from "../../src/layout/lots-for-area.js";
import { runOfUnits } from "../../src/layout/run-of-units.js";
import { stoneBelow } from "../../src/layout/stone-below.js";
import { tapeMark } from "../../src/layout/tape-mark.js";
import { unitsForFace } from "../../src/layout/units-for-face.js";
import { bondPattern } from "../../src/layout/bond-pattern.js";
import { coursing } from "../../src/layout/coursing.js";
import { headsAndSills } from "../../src/layout/heads-and-sills.js";
import { lotsByElevation } from "../../src/layout/lots-by-elevation.js";
import { itHoldsTheLimits, itHoldsTheLimitsIn } from "../support/limits.js";

describe("limits", () => {
  itHoldsTheLimits(baseMove, { mostError: "any in", leastError: "any in" });
  itHoldsTheLimits(bondShift, { unitLength: "above 0 in", headJoint: "from 0 in", offset: "from 0 %, below 100 %" });
  itHoldsTheLimits(cornerLead, { courses: "from 1, whole", courseHeight: "above 0 in", topLength: "above 0 in", step: "above 0 in" });
  itHoldsTheLimits(cornerUnits, { edgeHeight: "above 0 ft", longLeg: "above 0 in", shortLeg: "above 0 in", courseHeight: "above 0 in", waste: "from 0 %, below 100 %" });
  itHoldsTheLimits(cutInRun, { run: "above 0 in", wholeTotal: "from 0 in", joints: "from 0, whole", joint: "from 0 in", cuts: "from 1, whole" });
  itHoldsTheLimits(cutUnits, { endHeight: "from 0 ft", courseHeight: "above 0 in", endShare: "from 0 %, to 100 %", rippedLength: "from 0 ft", unitLength: "above 0 in", headJoint: "from 0 in" });
  itHoldsTheLimits(errorPerJoint, { error: "any in", joints: "from 1, whole" });
  itHoldsTheLimits(halfUnit, { unit: "above 0 in", joint: "from 0 in" });
  itHoldsTheLimits(jointBedToBed, { run: "above 0 in", unitsTotal: "above 0 in", units: "from 1" });
  itHoldsTheLimits(jointForCut, { run: "above 0 in", wholeTotal: "from 0 in", cuts: "from 1, whole", cut: "above 0 in", joints: "from 1, whole" });
  itHoldsTheLimits(jointInOpening, { run: "above 0 in", unitsTotal: "above 0 in", units: "from 1" });
  itHoldsTheLimits(jointUnitToUnit, { run: "above 0 in", unitsTotal: "above 0 in", units: "above 1" });
  itHoldsTheLimits(leadGap, { wallLength: "above 0 in", leftLength: "from 0 in", rightLength: "from 0 in", unitLength: "above 0 in", joint: "from 0 in" });
  itHoldsTheLimits(ledgerHeight, { courseLine: "above 0 in", unitHeight: "above 0 in", bedJoint: "from 0 in", clearance: "from 0 in", leastBelow: "from 0 in" });
  itHoldsTheLimits(ledgerLine, { courseLine: "above 0 in", unitHeight: "above 0 in", bedJoint: "from 0 in", clearance: "from 0 in", groundFall: "from 0 in", leastCut: "above 0 in", ledgerLength: "above 0 ft", studSpacing: "above 0 in", wetWeight: "above 0 lb/ft2", uncuredHeight: "above 0 ft", allowableLoadPerScrew: "above 0 lbf", timeAtReference: "above 0 h", reference: "from 40 degF, to 120 degF", temperature: "from 40 degF, to 120 degF", activation: "from 1000 K, to 10000 K" });
  itHoldsTheLimits(ledgerScrews, { wetLoad: "above 0 psf", uncuredHeight: "above 0 ft", ledgerLength: "above 0 ft", studSpacing: "above 0 in", allowableLoadPerScrew: "above 0 lbf" });
  itHoldsTheLimits(lotsForArea, { area: "above 0 ft2", waste: "from 0 %, below 100 %", lotCover: "above 0 ft2" });
  itHoldsTheLimits(runOfUnits, { unitsTotal: "above 0 in", units: "from 1", joint: "from 0 in" });
  itHoldsTheLimits(stoneBelow, { below: "from 0 in", groundFall: "from 0 in", unitHeight: "above 0 in", bedJoint: "from 0 in" });
  itHoldsTheLimits(tapeMark, { height: "from 0 in", division: "above 0 in" });
  itHoldsTheLimits(unitsForFace, { area: "above 0 ft2", cornerCover: "from 0 ft2", unitLength: "above 0 in", unitHeight: "above 0 in", headJoint: "from 0 in, usually 3/8 in", bedJoint: "from 0 in, usually 3/8 in", waste: "from 0 %, below 100 %", packCount: "from 1, whole" });

  const joint = { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" };
  const course = { length: "95-5/8 in", unitLength: "11-5/8 in", headJoint: joint, left: { kind: "plain" }, right: { kind: "plain" }, courses: 10, leastCut: "2 in" };
  itHoldsTheLimitsIn(bondPattern, "plain ends", { ...course, offset: "50 %" }, {
    length: "above 0 in", unitLength: "above 0 in", offset: "from 0 %, below 100 %", leastCut: "above 0 in",
    "headJoint.least": "from 0 in", "headJoint.wanted": "from 0 in", "headJoint.most": "from 0 in", courses: "from 1, to 100000",
  });
  itHoldsTheLimitsIn(bondPattern, "a corner", { ...course, left: { kind: "corner", longLeg: "8 in", shortLeg: "4 in", firstCourse: "long leg" } }, { "left.longLeg": "above 0 in", "left.shortLeg": "above 0 in" });
  itHoldsTheLimitsIn(coursing, "courses", { height: "8 ft 4 in", unitHeights: ["3-5/8 in"], bedJoint: joint, datum: "bed to bed", bedJointLies: "over the unit", tape: "1/16 in", leastCut: "1 in" }, {
    height: "above 0 in", "unitHeights.0": "above 0 in", leastCut: "above 0 in", "bedJoint.least": "from 0 in", "bedJoint.wanted": "from 0 in", "bedJoint.most": "from 0 in",
  });
  itHoldsTheLimitsIn(headsAndSills, "a window", { unitHeights: ["7-5/8 in"], bedJoint: "3/8 in", openings: [{ name: "A", sill: "32 in", head: "80-1/4 in" }], spreadOver: 4, jointChange: "1/8 in", leastCut: "1 in" }, {
    "unitHeights.0": "above 0 in", bedJoint: "from 0 in", "openings.0.sill": "above 0 in", "openings.0.head": "above 0 in", spreadOver: "from 1, to 1000", jointChange: "above 0 in", leastCut: "above 0 in",
  });
  itHoldsTheLimitsIn(lotsByElevation, "an elevation", { elevations: [{ name: "south", area: "1180 ft2" }], lotCover: "40 ft2", waste: "5 %" }, { "elevations.0.area": "above 0 ft2", lotCover: "above 0 ft2", waste: "from 0 %, below 100 %" });
});
