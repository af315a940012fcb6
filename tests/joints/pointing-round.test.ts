import { describe, expect, it } from "vitest";
import { pointingRound } from "../../src/joints/pointing-round.js";
import { faults } from "../support/faults.js";
import { expectPrinted } from "../support/vectors.js";

const joints = { toolingRate: "60 ft/h", toolers: 1, window: "45 min", totalLength: "1220 ft", width: "3/8 in", depth: "1/2 in" } as const;

describe("pointingRound", () => {
  it("sizes a round to the tooler: 45 ft and 0.059 ft3", () => {
    // 45 ft x 3/8 x 1/2 in = 101.25 in3 = 0.0586 ft3
    const round = pointingRound({ method: "bag-filled", ...joints });
    expect(round.length.toString()).toBe("45 ft");
    expectPrinted(round.volume.to("ft3"), "0.059");
    expect(round.rounds.toString()).toBe("28");
  });

  it("tells layers where old joints are repointed, and only there", () => {
    expect(pointingRound({ method: "repointing", ...joints, depth: "3/4 in" }).layers?.toString()).toBe("3");
    expect("layers" in pointingRound({ method: "bag-filled", ...joints, depth: "3/4 in" })).toBe(false);
  });

  it("asks for the method", () => {
    expect(faults(pointingRound.try(joints))).toEqual(["missing method"]);
  });
});
