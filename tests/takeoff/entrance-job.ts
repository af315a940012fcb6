// An entrance of three elevations and two columns; the same job in feet and inches, and with every size converted.
import type { Job } from "../../src/takeoff/index.js";

/** Writes a size in feet and inches or gallons and pounds as it is, or converts it. */
type Write = (value: number, unit: "in" | "ft" | "gal" | "qt" | "floz" | "ft3" | "lb" | "mil") => string;

const us: Write = (value, unit) => `${value} ${unit === "floz" ? "fl oz" : unit}`;

// 1 in = 25.4 mm, 1 gal = 3.785411784 L, 1 qt = gal / 4, 1 fl oz = gal / 128, 1 ft3 = 28.316846592 L, 1 lb = 0.45359237 kg, in ten-thousandths of a millionth
const exact: Readonly<Record<Parameters<Write>[1], readonly [numerator: bigint, unit: string]>> = {
  in: [25_400_000_000_000n, "mm"],
  ft: [304_800_000_000_000n, "mm"],
  mil: [25_400_000_000_000n, "um"],
  gal: [3_785_411_784_000n, "L"],
  qt: [946_352_946_000n, "L"],
  floz: [29_573_529_562_500n, "mL"],
  ft3: [28_316_846_592_000n, "L"],
  lb: [453_592_370_000n, "kg"],
};

const si: Write = (value, unit) => {
  const [factor, metric] = exact[unit];
  // Every size here is a whole number of ten-thousandths.
  const digits = (BigInt(Math.round(value * 10_000)) * factor).toString().padStart(17, "0");
  return `${digits.slice(0, -16)}.${digits.slice(-16)} ${metric}`;
};

function entrance(write: Write): Job {
  const [ft, inches] = [(value: number) => write(value, "ft"), (value: number) => write(value, "in")];
  return {
    name: "Entrance",
    measuredTo: "backing",
    elevations: [
      {
        name: "front",
        shape: { kind: "rectangle", width: ft(40), height: ft(10) },
        openings: [
          { name: "door", shape: { kind: "rectangle", width: ft(6), height: ft(8) }, returnDepth: inches(6), returnUnits: "corner", toBase: true },
          { name: "windows", shape: { kind: "rectangle", width: ft(4), height: ft(5) }, count: 2, returnDepth: inches(6), returnUnits: "corner", toBase: false },
        ],
        outsideCorners: [{ height: ft(10), otherFace: "elevation", with: "side" }, { height: ft(10), otherFace: "unclad" }],
        insideCorners: [{ height: ft(10), otherFace: "elevation", with: "bay" }],
        soffits: [{ length: ft(8), depth: ft(3) }],
        caps: [{ length: ft(40) }],
      },
      {
        name: "side",
        shape: { kind: "rectangle", width: ft(16), height: ft(10) },
        openings: [{ shape: { kind: "rectangle", width: ft(3), height: ft(4) }, returnDepth: inches(0), returnUnits: "flat", toBase: false }],
        outsideCorners: [],
      },
      { name: "bay", shape: { kind: "rectangle", width: ft(12), height: ft(10) }, openings: [], outsideCorners: [] },
    ],
    columns: [{ name: "columns", width: ft(2), depth: ft(1.5), height: ft(8), count: 2 }],
    layers: [
      { kind: "studs", spacing: inches(16) },
      { kind: "boards", name: "sheathing", acrossStuds: ft(4), alongStuds: ft(8), edgesBacked: false, screwSpacing: inches(8), edgeDistance: inches(0.375) },
      { kind: "boards", name: "cement board", acrossStuds: ft(5), alongStuds: ft(3), edgesBacked: true, screwSpacing: inches(8), edgeDistance: inches(0.375) },
      { kind: "joint tape", name: "joint tape", over: "cement board", overlaps: 30, overlap: inches(2) },
      { kind: "barrier", name: "barrier", wetFilm: write(18, "mil"), coats: 2, deductFrom: "0 ft2" },
      { kind: "ledger", name: "ledger", lap: inches(0) },
      { kind: "trim", name: "head flashing", along: ["heads"], beyond: inches(4), lap: inches(4) },
      { kind: "trim", name: "sills", along: ["sills"], beyond: inches(2), lap: inches(0) },
      { kind: "trim", name: "caps", along: ["caps"], lap: inches(0) },
      { kind: "setting bed", name: "setting mortar", bed: { from: "thickness", thickness: inches(0.5) }, backButter: inches(0.125), butteredShare: "100 %" },
      {
        kind: "units", name: "flat units", unitLength: inches(11.625), unitHeight: inches(3.625), unitThickness: inches(1), headJoint: inches(0.375), bedJoint: inches(0.375),
        lots: "by elevation",
        corners: { name: "corner units", longLeg: inches(8), shortLeg: inches(4) },
        spacers: { name: "spacers", perUnit: 2, reuseShare: "60 %" },
      },
      { kind: "joints", name: "joint mortar", squeezeOut: inches(0.25), tooling: { profile: "raked", profileDepth: inches(0.1875) } },
      { kind: "movement joints", name: "sealant", length: ft(67), insideCorners: true, width: inches(0.375), backerRod: "backer rod" },
    ],
    packs: {
      "sheathing screws": { pieces: 1000 },
      "cement board screws": { pieces: 500 },
      "cement board edge backing": { length: ft(12) },
      "joint tape": { length: ft(150) },
      barrier: { volume: write(5, "gal") },
      ledger: { length: ft(16) },
      "head flashing": { length: ft(10) },
      sills: { length: ft(3) },
      caps: { length: ft(4) },
      "setting mortar": { bag: write(50, "lb"), yield: write(0.45, "ft3"), waterLow: write(5, "qt"), waterHigh: write(6, "qt") },
      "flat units": { pieces: 40 },
      "corner units": { pieces: 12 },
      "joint mortar": { bag: write(50, "lb"), yield: write(0.42, "ft3"), waterLow: write(3.5, "qt"), waterHigh: write(4.5, "qt") },
      sealant: { volume: write(10, "floz") },
      "backer rod": { length: ft(100) },
    },
    allowances: {
      sheathing: { waste: "10 %" },
      "sheathing screws": { waste: "5 %" },
      "cement board": { waste: "12.5 %" },
      "cement board screws": { waste: "5 %" },
      "cement board edge backing": { waste: "0 %" },
      "joint tape": { waste: "10 %" },
      barrier: { lossShare: "20 %" },
      ledger: { waste: "5 %" },
      "head flashing": { waste: "5 %" },
      sills: { waste: "0 %" },
      caps: { waste: "5 %" },
      "setting mortar": { waste: "15 %" },
      "flat units": { waste: "8 %" },
      "corner units": { waste: "5 %" },
      "joint mortar": { waste: "10 %" },
      sealant: { waste: "25 %" },
      "backer rod": { waste: "0 %" },
    },
    spare: { "flat units": "2 %" },
    weights: { perPack: { "flat units": write(150, "lb"), "setting mortar": write(51, "lb"), sheathing: write(70, "lb") }, hoistLoad: write(1000, "lb") },
    labour: {
      efficiency: "80 %",
      tasks: [
        { name: "set stone", of: "stone face", hours: "20 h", per: "100 ft2", factor: 1 },
        { name: "set corners", of: "corner edges", hours: "0.2 h", per: ft(1), factor: "125 %" },
        { name: "screw cement board", of: "cement board screws", hours: "1 h", per: 180 },
      ],
    },
    prices: {
      smallest: "0.01 USD",
      markup: "10 %",
      tax: "8.25 %",
      allowance: { share: "2.5 %", taxed: true },
      items: {
        sheathing: { each: "31.15 USD", taxed: true },
        "setting mortar": { perPack: "27.85 USD", markup: "12.5 %", taxed: true },
        "flat units": { perPack: "142.35 USD", taxed: false },
      },
    },
    checks: { wetFilm: { least: write(15, "mil"), most: write(22, "mil") } },
  };
}

export const entranceInFeet = entrance(us);
export const entranceInMetres = entrance(si);
