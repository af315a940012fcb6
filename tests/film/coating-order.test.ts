import { describe, expect, it } from "vitest";
import { coatingOrder } from "../../src/film/coating-order.js";
import { wetFilm } from "../../src/film/wet-film.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

describe("coatingOrder counts exactly", () => {
  it.each(vectors("dec-film-pails-"))("5-gal pails: $id", ({ inputs, expected }) => {
    const order = coatingOrder({ area: inputs.area as "3850 ft2", wetFilm: inputs.wet as "35 mil", coats: inputs.coats as "1", lossShare: inputs.loss as "30 %", packVolume: "5 gal" });
    expectPrinted(order.packs.to(), expected.pails);
  });

  it("5-gal pails from a dry film: 25 mil at 60 %", () => {
    const { inputs, expected } = vector("dec-dry-to-wet-pails-1");
    const film = wetFilm({ dryBuild: inputs.dry as "25 mil", volumeSolids: inputs.solids as "60 %", coats: 1 }).wetFilm;
    expectPrinted(coatingOrder({ area: inputs.area as "3080 ft2", wetFilm: film, coats: 1, waste: 0, packVolume: "5 gal" }).packs.to(), expected.pails);
  });

  it.each(vectors("membrane-loss-"))("pails by what one covers: $id", ({ inputs, expected }) => {
    // A pail that covers 50 ft2 an inch deep holds 50/12 ft3.
    const cover = /^\d+/.exec(inputs.cover ?? "")?.[0] ?? "";
    const order = coatingOrder({ area: inputs.area as "855 ft2", wetFilm: "1 in", coats: 1, lossShare: inputs.loss as "5 %", packVolume: `${cover}/12 ft3` as "50/12 ft3" });
    expectPrinted(order.packs.to(), expected.pails);
  });

  it.each(vectors("coats-times-rate-"))("coats at so much a coat: $id", ({ inputs, expected }) => {
    // 231 in2 covered 0.1 in deep take 23.1 in3, a tenth of a gallon.
    const rate = /^[\d.]+/.exec(inputs.rate ?? "")?.[0] ?? "";
    const order = coatingOrder({ area: "231 in2", wetFilm: `${rate} in` as "0.1 in", coats: inputs.coats as "3", waste: 0, packVolume: inputs.bucket as "0.1 gal" });
    expectPrinted(order.packs.to(), expected.buckets);
  });
});

const job = { area: "1540 ft2", wetFilm: "20 mil", coats: 2, packVolume: "5 gal" } as const;

describe("coatingOrder", () => {
  it("keeps waste and loss apart: 30 % on top is x 1.30, 30 % lost is / 0.70", () => {
    // 1540 ft2 x 144 = 221,760 in2; x 0.040 in = 8,870.4 in3; / 231 = 38.4 gal
    const [waste, loss] = [coatingOrder({ ...job, waste: "30 %" }), coatingOrder({ ...job, lossShare: "30 %" })];
    expect([waste.net.toString(), waste.toOrder.toString(), waste.packs.toString()]).toEqual(["38.4 gal", "49.92 gal", "10"]);
    expect([loss.net.toString(), loss.toOrder.to("gal").toFixed(4), loss.packs.toString()]).toEqual(["38.4 gal", "54.8571", "11"]);
  });

  it("is the same job in metric, and then shown so", () => {
    // 100 m2 x 0.5 mm x 2 = 100 L
    const metric = coatingOrder({ area: "100 m2", wetFilm: "500 um", coats: 2, waste: "10 %", packVolume: "20 L" });
    expect([metric.net.toString(), metric.toOrder.toString(), metric.packs.toString()]).toEqual(["100 L", "110 L", "6"]);
  });

  it("wants exactly one of waste and lossShare", () => {
    const codes = (input: object): readonly unknown[] => {
      const tried = coatingOrder.try({ ...job, ...input });
      return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")]);
    };
    expect(codes({})).toEqual([["either", "allowance"]]);
    expect(codes({ waste: "10 %", lossShare: "10 %" })).toEqual([["either", "allowance"]]);
    expect(codes({ lossShare: "100 %" })).toEqual([["tooHigh", "lossShare"]]);
    expect(codes({ lossShare: "99.9 %" })).toEqual([]);
    expect(codes({ waste: 10 })).toEqual([["tooHigh", "waste"]]);
    expect(codes({ waste: 0, area: "0 ft2", packVolume: "0 gal" })).toEqual([["tooLow", "area"], ["tooLow", "packVolume"]]);
  });
});
