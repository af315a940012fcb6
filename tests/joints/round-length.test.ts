import { describe, expect, it } from "vitest";
import { roundLength } from "../../src/joints/round-length.js";
import { faults } from "../support/faults.js";

describe("roundLength", () => {
  it("is what the toolers strike in the window: 60 ft/h for 45 min is 45 ft", () => {
    const round = roundLength({ toolingRate: "60 ft/h", toolers: 1, window: "45 min", totalLength: "1220 ft" });
    expect(round.length.toString()).toBe("45 ft");
    // 1220 / 45 = 27.1
    expect(round.rounds.toString()).toBe("28");
    expect(roundLength({ toolingRate: "60 ft/h", toolers: 1, window: "45 min", totalLength: "1215 ft" }).rounds.toString()).toBe("27");
  });

  it("doubles with a second tooler and halves where the joint stays soft half as long", () => {
    expect(roundLength({ toolingRate: "60 ft/h", toolers: 2, window: "45 min", totalLength: "90 ft" }).rounds.toString()).toBe("1");
    expect(roundLength({ toolingRate: "60 ft/h", toolers: 1, window: "22.5 min", totalLength: "90 ft" }).length.toString()).toBe("22.5 ft");
  });

  it("refuses a round with nobody to tool it", () => {
    expect(faults(roundLength.try({ toolingRate: "60 ft/h", toolers: 0, window: "45 min", totalLength: "90 ft" }))).toEqual(["tooLow toolers"]);
  });
});
