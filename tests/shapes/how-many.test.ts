import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { howMany } from "../../src/shapes/how-many.js";

const read = (given: unknown): number | undefined => {
  const tried = z.safeParse(howMany(), given);
  return tried.success ? tried.data.toNumber() : undefined;
};

describe("howMany", () => {
  it("is one where it is left out, and any whole number to a hundred thousand", () => {
    expect([undefined, 1, 2, "3", 100_000].map(read)).toEqual([1, 1, 2, 3, 100_000]);
  });

  it("is never none, nor a part, nor more than a job can have", () => {
    expect([0, 0.5, 1.5, 2.5, 100_001, -1, "two"].map(read)).toEqual(Array(7).fill(undefined));
    const half = z.safeParse(howMany(), 1.5);
    expect(half.success ? "" : half.error.issues[0]?.message).toBe("write a whole number");
  });
});
