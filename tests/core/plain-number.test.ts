// The numbers that are written most are read by themselves; fraction.js, a general-purpose library, reads the same texts.
import fc from "fast-check";
import { Fraction as Reference } from "fraction.js";
import { describe, expect, it } from "vitest";
import { plainNumber } from "../../src/core/plain-number.js";

const whole = fc.integer({ min: 0, max: 99_999 }).map(String);
const digits = fc.stringMatching(/^\d{1,8}$/);
const below = fc.integer({ min: 1, max: 999 }).map(String);
const number = fc.oneof(
  whole,
  fc.tuple(whole, digits).map(([a, b]) => `${a}.${b}`),
  fc.tuple(whole, below).map(([a, b]) => `${a}/${b}`),
  fc.tuple(whole, fc.constantFrom("-", " "), whole, below).map(([a, sign, b, c]) => `${a}${sign}${b}/${c}`),
);

describe("plain numbers", () => {
  it("reads what fraction.js reads, and tells where the unit begins", () => {
    fc.assert(
      fc.property(number, fc.constantFrom("", " ", "in", " ft2", "/ft2", " /ft2", " %"), (text, rest) => {
        const read = plainNumber(text + rest);
        expect(read === undefined).toBe(text.length > 15);
        if (read === undefined) return;
        expect(read.number.toString()).toBe(new Reference(text.replace("-", " ")).toFraction());
        expect((text + rest).slice(read.end)).toBe(rest.trimStart());
      }),
      { numRuns: 500 },
    );
  });

  it.each(["", "ft", "-3 ft", "+3 ft", ".5 ft", "5. ft", "3/0 in", "1-3/0 in", "1234567890123456 mm", "0.123456789012345 m", "−3 ft", " 3 ft"])("leaves %j to the reader of all texts", (text) => {
    expect(plainNumber(text)).toBeUndefined();
  });

  it.each([
    ["5-7 min", "5", "-7 min"],
    ["5 ft 6-3/8 in", "5", "ft 6-3/8 in"],
    ["1,250 ft2", "1", ",250 ft2"],
    ["1.5e3 mm", "3/2", "e3 mm"],
    ["1/2/3 in", "1/2", "/3 in"],
    ["12 /ft2", "12", "/ft2"],
    ["12 -/4 in", "12", "-/4 in"],
  ])("stops in %j after %s", (text, expected, rest) => {
    const { number: read, end = 0 } = plainNumber(text) ?? {};
    expect([read?.toString(), text.slice(end)]).toEqual([expected, rest]);
  });
});
