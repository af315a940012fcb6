import { describe, expect, it } from "vitest";
import { densityTable, type layerTable } from "../../src/data/limits.js";
import { assemblyWeight } from "../../src/limits/assembly-weight.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

type Layer = Parameters<typeof assemblyWeight>[0]["layers"][number];

const stone: Layer = { name: "stone", part: "unit", from: "density", thickness: "1-1/4 in", density: "150 pcf", wetGain: "4 %" };
const bed: Layer = { name: "setting bed", part: "veneer", from: "density", thickness: "1/2 in", density: "132 pcf", wetGain: "10 %" };
const membrane: Layer = { name: "barrier", part: "wall", from: "layer table", material: "liquid membrane", wetGain: "0 %" };
const behind: Layer = { name: "boards and studs", part: "wall", from: "weight", weight: "6 psf", wetGain: "0 %" };

describe("assemblyWeight", () => {
  it("keeps the unit, the veneer as installed and the whole apart, dry and wet", () => {
    const { layers, dry, wet, onStud } = assemblyWeight({ layers: [stone, bed, membrane, behind], studSpacing: "16 in" });
    // dry 150 x 1.25/12 = 15.625; 132 x 0.5/12 = 5.5; 1; 6
    expect(layers.map((layer) => layer.dry.toString())).toEqual(["15.625 lb/ft2", "5.5 lb/ft2", "1 lb/ft2", "6 lb/ft2"]);
    expect([dry.unit?.toString(), dry.installed?.toString(), dry.total.toString()]).toEqual(["15.625 lb/ft2", "21.125 lb/ft2", "28.125 lb/ft2"]);
    // wet 15.625 x 1.04 = 16.25; 5.5 x 1.1 = 6.05
    expect([wet.unit?.toString(), wet.installed?.toString(), wet.total.toString()]).toEqual(["16.25 lb/ft2", "22.3 lb/ft2", "29.3 lb/ft2"]);
    // 29.3 x 4/3 = 39.0666...
    expectPrinted(onStud?.to("lb/ft") ?? "", "39.0667");
  });

  it("leaves out what has no layer", () => {
    const { dry, onStud } = assemblyWeight({ layers: [behind] });
    expect([dry.unit, dry.installed, onStud]).toEqual([undefined, undefined, undefined]);
    expect(assemblyWeight({ layers: [bed, behind] }).dry.installed?.toString()).toBe("5.5 lb/ft2");
  });

  it("is the HUD guide's wall of 15 psf with stucco on a base of 6 psf, to the psf (Residential Structural Design Guide, Table 3.2)", () => {
    const { inputs, expected } = vector("dl-hud-stucco");
    const base: Layer = { name: "wall", part: "wall", from: "layer table", material: "wood studs 2x4, sheathing 1/2 in, gypsum board 1/2 in inside", wetGain: 0 };
    const stucco: Layer = { name: "stucco", part: "veneer", from: "density", thickness: inputs.thickness as "7/8 in", density: expected.impliedDensity as "123 pcf", wetGain: 0 };
    const { layers, dry } = assemblyWeight({ layers: [base, stucco] });
    expectPrinted(dry.total.to("lb/ft2"), inputs.total);
    expectPrinted(layers[0]?.dry.to("lb/ft2") ?? "", vector("dl-hud-wall-base").expected.load);
  });

  it("has the layers of ASCE 7 Table C3-1 as printed", () => {
    const weight = (material: keyof typeof layerTable): string => assemblyWeight({ layers: [{ name: "it", part: "wall", from: "layer table", material, wetGain: 0 }] }).dry.total.to("lb/ft2").toString();
    expect(`${weight("gypsum sheathing, 1/2 in")} psf (0.10 kN/m2)`).toBe(vector("dl-gyp-sheathing-half").expected.load);
    expect(`${weight("fibreboard, 1/2 in")} psf (0.04 kN/m2)`).toBe(vector("dl-fiberboard-half").expected.load);
    expect(`0.05 kN/m2 (${weight("liquid membrane")} psf)`).toBe(vector("dl-liquid-membrane").expected.load);
  });

  it("has gypsum board by its thickness: 0.55 psf to each 1/8 in (ASCE 7 Table C3-1)", () => {
    const { inputs, expected } = vector("dl-gyp-board-58");
    expect(inputs.rate).toBe("0.55 psf per 1/8 in");
    const board = assemblyWeight({ layers: [{ name: "board", part: "wall", from: "density table", material: "gypsum board", thickness: inputs.thickness as "5/8 in", wetGain: 0 }] });
    expectPrinted(board.dry.total.to("lb/ft2"), expected.load);
  });

  it("has stone at the least density of its standard, and says that it is the least", () => {
    const names = Object.keys(densityTable).filter((name) => name !== "gypsum board") as (keyof typeof densityTable)[];
    const rows = vectors("stone-density-");
    expect(rows).toHaveLength(names.length);
    for (const row of rows) {
      const name = row.id.replace("stone-density-", "");
      const material = names.find((one) => one.replace(", ", "-").replace(" density", "").replace(" ", "-") === name);
      const weighed = assemblyWeight.solve({ layers: [{ name, part: "unit", from: "density table", material: material as "granite", thickness: "1 in", wetGain: 0 }] });
      expectPrinted(weighed.answers.dry.unit?.to("lb/ft2") ?? "", row.expected.weight1in);
      expect(weighed.cautions.some((text) => text.includes("a real stone is heavier"))).toBe(true);
    }
  });

  it("tells where each figure comes from", () => {
    const granite: Layer = { name: "stone", part: "unit", from: "density table", material: "granite", thickness: "1 in", wetGain: 0 };
    const titles = assemblyWeight.solve({ layers: [membrane, granite] }).bases.map((basis) => (basis.kind === "published" ? basis.title : ""));
    expect(titles).toEqual(expect.arrayContaining(["ASCE 7, Minimum Design Loads for Buildings and Other Structures", "C503, C568, C615, C616, physical requirements"]));
  });

  it("tells all that is wrong at once", () => {
    expect(faults(assemblyWeight.try({ layers: [] }))).toEqual(["refused layers"]);
    const wrong = [{ ...stone, wetGain: undefined }, { ...bed, thickness: "0 in" }, { ...membrane, material: "lead" }, { ...behind, from: "guess" }];
    expect(faults(assemblyWeight.try({ layers: wrong }))).toEqual(["missing layers.0.wetGain", "tooLow layers.1.thickness", "notAChoice layers.2.material", "notAChoice layers.3.from"]);
  });

  it("calls nothing safe, compliant or approved, and sends to the code and a licensed designer", () => {
    const { cautions } = assemblyWeight.solve({ layers: [stone, bed, membrane] });
    expect(cautions.join(" ")).not.toMatch(/\b(safe|compliant|approved)\b/i);
    expect(cautions.join(" ")).toMatch(/local code and a licensed design professional/);
  });
});
