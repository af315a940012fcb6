// How often a coating is tested for cure, as UFGS-09971 counts, quoted.
import { describe, expect, it } from "vitest";
import { cureTests } from "../../src/film/cure-tests.js";
import { expectPrinted, vectors } from "../support/vectors.js";

describe("cureTests", () => {
  it.each(vectors("cure-test-count-"))("$id: $inputs.area (UFGS-09971, page 28)", ({ inputs, expected }) => {
    expectPrinted(cureTests({ area: inputs.area as "1000 ft2" }).tests.toNumber(), expected.tests);
  });

  it("has one more from just beyond each further 1,000 ft2", () => {
    const areas = ["1 ft2", "1000 ft2", "1000.01 ft2", "2000 ft2", "2000.01 ft2", "10000 ft2"] as const;
    expect(areas.map((area) => cureTests({ area }).tests.toNumber())).toEqual([3, 3, 4, 4, 5, 12]);
  });
});
