import { describe, expect, it } from "vitest";
import { filmMean } from "../../src/film/film-mean.js";

describe("filmMean", () => {
  it("7.0 + 8.4 + 9.1 + 8.8 + 9.6 = 42.9 mil over 5 is 8.58 mil, exactly", () => {
    expect(filmMean({ total: "42.9 mil", readings: 5 }).mean.toJSON()).toEqual({ value: "429/50", unit: "mil" });
  });

  it("refuses no readings", () => {
    const tried = filmMean.try({ total: "0 mil", readings: 0 });
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["total", "readings"]);
  });
});
