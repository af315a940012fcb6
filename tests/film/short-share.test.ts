import { describe, expect, it } from "vitest";
import { shortShare } from "../../src/film/short-share.js";

describe("shortShare", () => {
  it("3 of 15 are a fifth", () => {
    expect(shortShare({ short: 3, readings: 15 }).share.toString()).toBe("20 %");
    expect(shortShare({ short: 0, readings: 15 }).share.toString()).toBe("0 %");
  });

  it("all of them are the whole", () => {
    expect(shortShare({ short: 15, readings: 15 }).share.toString()).toBe("100 %");
  });

  it("refuses more short readings than there are readings", () => {
    expect(shortShare.try({ short: 16, readings: 15 })).toMatchObject({ ok: false, problems: [{ code: "tooHigh", path: ["share"] }] });
  });
});
