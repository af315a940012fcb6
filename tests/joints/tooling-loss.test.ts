import { describe, expect, it } from "vitest";
import { toolingLoss } from "../../src/joints/tooling-loss.js";
import { faults } from "../support/faults.js";

const joint = { width: "3/8 in", depth: "3/4 in" } as const;

describe("toolingLoss", () => {
  it("picks the profile", () => {
    const share = (profile: "v" | "raked" | "weathered" | "struck"): string => toolingLoss({ profile, ...joint, profileDepth: "3/16 in" }).share.toString();
    // 3/16 of 3/4 is a quarter: the whole of it raked, half of it otherwise.
    expect([share("raked"), share("v"), share("weathered"), share("struck")]).toEqual(["25 %", "12.5 %", "12.5 %", "12.5 %"]);
    // A half circle: pi x 3/8 / (8 x 3/4) = 19.63 %
    expect(toolingLoss({ profile: "concave", ...joint, toolRadius: "3/16 in" }).share.to("%").toFixed(2)).toBe("19.63");
    expect(toolingLoss({ profile: "flush", ...joint }).removed.toString()).toBe("0 in2");
  });

  it("asks for what a profile needs, and refuses what it does not", () => {
    expect(faults(toolingLoss.try({ profile: "concave", ...joint }))).toEqual(["missing toolRadius"]);
    const noRadius = toolingLoss.try({ profile: "concave", ...joint });
    expect(noRadius.ok ? "" : noRadius.problems[0]?.wanted).toBe("a concave joint needs it");
    const noDepth = toolingLoss.try({ profile: "struck", ...joint });
    expect(noDepth.ok ? "" : noDepth.problems[0]?.wanted).toBe("a struck joint needs it");
    expect(faults(toolingLoss.try({ profile: "raked", ...joint }))).toEqual(["missing profileDepth"]);
    expect(faults(toolingLoss.try({ profile: "raked", ...joint, toolRadius: "1/4 in" }))).toEqual(["refused toolRadius", "missing profileDepth"]);
    expect(faults(toolingLoss.try({ profile: "flush", ...joint, profileDepth: "1/4 in" }))).toEqual(["refused profileDepth"]);
    expect(faults(toolingLoss.try({ profile: "concave", ...joint, toolRadius: "1/8 in" }))).toEqual(["tooLow spare"]);
    expect(faults(toolingLoss.try({ profile: "beaded", ...joint }))).toEqual(["notAChoice profile"]);
  });
});
