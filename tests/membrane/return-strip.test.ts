import { describe, expect, it } from "vitest";
import { returnStrip } from "../../src/membrane/return-strip.js";

describe("returnStrip", () => {
  it("14 ft by 6 in is 7 ft2", () => {
    expect(returnStrip({ length: "14 ft", depth: "6 in" }).area.toString()).toBe("7 ft2");
  });

  it("is nothing where nothing is turned in, and cannot be less", () => {
    expect(returnStrip({ length: "14 ft", depth: "0 in" }).area.toString()).toBe("0 ft2");
    const tried = returnStrip.try({ length: "-1 ft", depth: "-1 in" });
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["length", "depth"]);
  });
});
