// A job changed in one place, and what that changes: checks at their edge, what is assumed, what cannot be.
import { describe, expect, it } from "vitest";
import { backingFace } from "../../src/takeoff/backing-face.js";
import { compareTakeOffs } from "../../src/takeoff/compare-take-offs.js";
import { fastenersByArea } from "../../src/takeoff/fasteners-by-area.js";
import { stoneFace } from "../../src/takeoff/stone-face.js";
import { takeOff } from "../../src/takeoff/take-off.js";
import { unitsByElevation } from "../../src/takeoff/units-by-elevation.js";
import { faults } from "../support/faults.js";
import { entranceInFeet } from "./entrance-job.js";

type Job = typeof entranceInFeet;
type Layer = Job["layers"][number];

/** The entrance with another layer in the place of one. */
const withLayer = (kind: Layer["kind"], change: object): Job => ({ ...entranceInFeet, layers: entranceInFeet.layers.map((layer) => (layer.kind === kind ? ({ ...layer, ...change }) : layer)) });
/** A value without some of its keys. */
const without = (value: object, ...keys: readonly string[]): object => Object.fromEntries(Object.entries(value).filter(([key]) => !keys.includes(key)));
const taken = (job: object): ReturnType<typeof takeOff.solve> => {
  const tried = takeOff.try(job);
  if (!tried.ok) throw new Error(tried.problems.map(({ message }) => message).join("\n"));
  return tried.solution;
};

describe("faces", () => {
  it("a face of nothing is none", () => {
    const nothing = { soffits: "0 ft2", growth: "0 ft2", loss: "0 ft2" };
    expect(faults(stoneFace.try({ ...nothing, walls: "100 ft2", openings: "100 ft2", returns: "0 ft2", turned: "0 ft2" }))).toEqual(["tooLow face"]);
    expect(faults(backingFace.try({ ...nothing, walls: "100 ft2", openings: "100 ft2" }))).toEqual(["tooLow face"]);
  });

  it("that of the backing is smaller by what the stone grows round its edges, and larger by what it loses inside corners", () => {
    // 100 - 10 + 5 - 3 + 2
    expect(backingFace({ walls: "100 ft2", openings: "10 ft2", soffits: "5 ft2", growth: "3 ft2", loss: "2 ft2" }).face.toString()).toBe("94 ft2");
    // 100 - 10 + 5 + 4 + 1 + 3 - 2
    expect(stoneFace({ walls: "100 ft2", openings: "10 ft2", soffits: "5 ft2", returns: "4 ft2", turned: "1 ft2", growth: "3 ft2", loss: "2 ft2" }).face.toString()).toBe("101 ft2");
  });
});

describe("fastenersByArea", () => {
  it("adds waste once and rounds once", () => {
    // 100 ft2 x 1.5 = 150; x 1.1 = 165; in packs of 100: 2.
    const order = fastenersByArea({ area: "100 ft2", fastenersPerArea: "1.5 /ft2", waste: "10 %", packCount: 100 });
    expect([order.net, order.withWaste, order.packs].map(String)).toEqual(["150", "165", "2"]);
    // 101 ft2: 151.5; x 1.1 = 166.65: 167 of them.
    const more = fastenersByArea({ area: "101 ft2", fastenersPerArea: "1.5 /ft2", waste: "10 %", packCount: 100 });
    expect([more.withWaste, more.toOrder, more.packs].map(String)).toEqual(["166.65", "167", "2"]);
  });
});

describe("unitsByElevation", () => {
  it("wants an elevation", () => {
    expect(faults(unitsByElevation.try({ elevations: [], unitLength: "8 in", unitHeight: "4 in", headJoint: "0 in", bedJoint: "0 in", waste: "0 %", packCount: 10 }))).toEqual(["refused elevations"]);
  });
});

describe("the checks of a take-off", () => {
  const findings = (job: object): readonly string[] => (taken(job).answers.checks ?? []).map(({ finding }) => finding);

  it("find a wet film below, within or over its band, and within at both ends", () => {
    const at = (wetFilm: string): readonly string[] => findings(withLayer("barrier", { wetFilm }));
    expect([at("14.9 mil"), at("15 mil"), at("22 mil"), at("22.1 mil")]).toEqual([["below"], ["within"], ["within"], ["over"]]);
  });

  it("may have one thickness for a band, and weigh no layers", () => {
    expect(findings({ ...entranceInFeet, checks: { wetFilm: { least: "18 mil", most: "18 mil" } } })).toEqual(["within"]);
    expect(findings({ ...entranceInFeet, checks: { weight: { layers: [], most: "12 lb/ft2" } } })).toEqual([]);
  });

  it("find layers over the weight they may have together, and within at it", () => {
    const weighed = (most: string): object => ({ ...withLayer("units", { weightPerArea: "12 lb/ft2" }), checks: { weight: { layers: ["flat units"], most } } });
    expect([findings(weighed("12 lb/ft2")), findings(weighed("11.9 lb/ft2"))]).toEqual([["within"], ["over"]]);
    expect(faults(takeOff.try({ ...entranceInFeet, checks: { weight: { layers: ["flat units"], most: "12 lb/ft2" } } }))).toEqual(["missing layers.10.weightPerArea"]);
  });
});

describe("what a take-off says besides", () => {
  it("cautions of what was not weighed, and not where all was", () => {
    expect(taken(entranceInFeet).cautions.join(" ")).toContain("The weight together is without");
    const all = Object.fromEntries(taken(entranceInFeet).answers.lines.filter(({ item }) => !item.startsWith("mixing water")).map(({ item }) => [item.replace(/^spare /, ""), "10 lb"]));
    expect(taken({ ...entranceInFeet, weights: { perPack: all } }).cautions.join(" ")).not.toContain("The weight together is without");
    const few = Object.fromEntries(Object.entries(all).slice(1));
    expect(taken({ ...entranceInFeet, weights: { perPack: few } }).cautions.join(" ")).toContain("The weight together is without");
  });

  it("assumes a ledger without laps where none is told, and openings off the ground where that is not told", () => {
    const told = taken(entranceInFeet).assumptions.join("\n");
    expect(told).not.toContain("pieces butt, without a lap");
    expect(told).not.toContain("toBase is not said");
    const noLap = taken({ ...entranceInFeet, layers: entranceInFeet.layers.map((layer) => (layer.kind === "ledger" ? without(layer, "lap") : layer)) }).assumptions.join("\n");
    expect(noLap).toContain("ledger: pieces butt, without a lap");
    const notSaid = taken({ ...entranceInFeet, elevations: entranceInFeet.elevations.map((one) => ({ ...one, openings: one.openings.map((opening) => without(opening, "toBase")) })) }).assumptions.join("\n");
    expect(notSaid).toContain("openings of which toBase is not said stand above the foot of the wall");
  });

  it("refuses a trim along nothing, and joints without units", () => {
    expect(faults(takeOff.try({ ...entranceInFeet, layers: entranceInFeet.layers.map((layer) => (layer.kind === "trim" && layer.name === "caps" ? { ...layer, along: [] } : layer)) }))).toEqual(["refused layers.8.along"]);
    const tried = faults(takeOff.try({ ...entranceInFeet, layers: entranceInFeet.layers.filter(({ kind }) => kind !== "units") }));
    expect(tried).toContain("missing layers");
  });
});

describe("compareTakeOffs", () => {
  it("counts packs that are added or removed from nought, and lists what stays", () => {
    const layers = entranceInFeet.layers.filter(({ kind }) => kind !== "ledger");
    const less = { ...entranceInFeet, layers, packs: without(entranceInFeet.packs, "ledger"), allowances: without(entranceInFeet.allowances, "ledger") } as Job;
    const bought = taken(entranceInFeet).answers.lines.find(({ item }) => item === "ledger");
    const packs = Number(bought?.packs?.toString());
    expect(packs).toBeGreaterThan(0);
    const removed = compareTakeOffs({ before: entranceInFeet, after: less });
    const added = compareTakeOffs({ before: less, after: entranceInFeet });
    const more = (compared: typeof removed): readonly string[] => compared.lines.map(({ item, change, packsMore }) => `${item} ${change} ${String(packsMore)}`);
    expect(more(removed)).toEqual([`ledger removed -${String(packs)}`]);
    expect(more(added)).toEqual([`ledger added ${String(packs)}`]);
    expect(removed.unchanged).not.toContain("ledger");
    expect(removed.unchanged).toContain("flat units");
  });

  it("does not list what changes among what stays", () => {
    const more = { ...entranceInFeet, allowances: { ...entranceInFeet.allowances, "flat units": { waste: "30 %" } } } as Job;
    const compared = compareTakeOffs({ before: entranceInFeet, after: more });
    expect(compared.lines.map(({ item }) => item)).toContain("flat units");
    expect(compared.unchanged).not.toContain("flat units");
    expect(compared.unchanged).toContain("corner units");
  });
});

describe("what a layer says of itself", () => {
  const lineOf = (job: object, name: string): ReturnType<typeof taken>["answers"]["lines"][number] => {
    const line = taken(job).answers.lines.find(({ item }) => item === name);
    if (line === undefined) throw new Error(`${name} is not in the list`);
    return line;
  };

  it("a lap of the ledger takes cover from every piece but the first", () => {
    // Pieces of 16 ft: the first covers 16, each further one 15.
    const line = lineOf(withLayer("ledger", { lap: "1 ft" }), "ledger");
    expect(line.packs?.toNumber()).toBe(Math.ceil((line.net.toNumber("ft") * 1.05 - 1) / 15));
    const butting = lineOf(withLayer("ledger", { lap: "0 in" }), "ledger");
    expect(butting.packs?.toNumber()).toBe(Math.ceil((butting.net.toNumber("ft") * 1.05) / 16));
    expect(line.packs?.toNumber()).toBeGreaterThan(butting.packs?.toNumber() ?? 0);
  });

  it("movement joints are those that are told, and inside corners where they are asked for", () => {
    // 67 ft, and the corner of 10 ft between front and bay.
    const rod = (change: object): ReturnType<typeof lineOf> => lineOf(withLayer("movement joints", change), "backer rod");
    expect([rod({}), rod({ insideCorners: false })].map(({ net }) => String(net))).toEqual(["77 ft", "67 ft"]);
    expect(taken(entranceInFeet).assumptions.some((text) => text.startsWith("backer rod: rod ") && text.endsWith("thick, ends butting"))).toBe(true);
    const none = { ...withLayer("movement joints", { insideCorners: false, length: "0 ft" }) };
    expect(faults(takeOff.try(none))).toContain("refused layers.12.length");
    const rodless = { ...entranceInFeet, layers: entranceInFeet.layers.map((layer) => (layer.kind === "movement joints" ? without(layer, "backerRod") : layer)), packs: without(entranceInFeet.packs, "backer rod"), allowances: without(entranceInFeet.allowances, "backer rod") };
    expect(taken(rodless).answers.lines.map(({ item }) => item)).not.toContain("backer rod");
  });

  it("no two items have one name, and the second is told by its place", () => {
    const told = (job: object): readonly string[] => faults(takeOff.try(job)).filter((one) => one.endsWith(".name"));
    const units = entranceInFeet.layers.find(({ kind }) => kind === "units") as { readonly corners: object; readonly spacers: object };
    expect(told(withLayer("units", { corners: { ...units.corners, name: "caps" } }))).toEqual(["refused layers.10.corners.name"]);
    expect(told(withLayer("units", { spacers: { ...units.spacers, name: "caps" } }))).toEqual(["refused layers.10.spacers.name"]);
    expect(told(withLayer("movement joints", { backerRod: "caps" }))).toEqual(["refused layers.12.backerRod.name"]);
  });

  it("sheets from a roll run over the openings, and that is told", () => {
    const mat = { kind: "sheet goods", name: "mat", sheetWidth: "39 in", sideLap: "3 in", endLap: "4 in" };
    const job = { ...entranceInFeet, layers: [...entranceInFeet.layers, mat], packs: { ...entranceInFeet.packs, mat: { length: "50 ft" } }, allowances: { ...entranceInFeet.allowances, mat: { waste: "5 %" } } };
    expect(taken(job).assumptions.some((text) => text.startsWith("mat: courses run the whole width and height of every elevation, openings in"))).toBe(true);
  });

  it("an edge distance of its own makes lines of screws shorter", () => {
    // 8 ft less 8 in at either end is 80 in, ten spaces and 11 screws; less 3/8 in 95-1/4, twelve spaces and 13. Four lines a board.
    const screws = (edgeDistance: object): string => lineOf({ ...entranceInFeet, layers: entranceInFeet.layers.map((layer) => (layer.kind === "boards" && layer.name === "sheathing" ? { ...without(layer, "edgeDistance"), ...edgeDistance } : layer)) }, "sheathing screws").net.toString();
    expect([screws({ edgeDistance: "8 in" }), screws({ edgeDistance: "3/8 in" }), screws({})]).toEqual([String(23 * 44), String(23 * 52), String(23 * 52)]);
  });

  it("an allowance of the barrier may be waste as well as loss", () => {
    const line = lineOf({ ...entranceInFeet, allowances: { ...entranceInFeet.allowances, barrier: { waste: "25 %" } } }, "barrier");
    expect([line.allowanceIs, String(line.allowance)]).toEqual(["waste", "25 %"]);
    // A quarter on top of the net is a fifth of what is bought.
    expect(line.packs?.toString()).toBe(lineOf(entranceInFeet, "barrier").packs?.toString());
  });

  it("the barrier deducts openings from the size that is told, all of them where none is, and says so", () => {
    const [all, none, large] = [taken(withLayer("barrier", { deductFrom: undefined })), taken(withLayer("barrier", { deductFrom: "0 ft2" })), taken(withLayer("barrier", { deductFrom: "100 ft2" }))];
    const said = [all, none, large].map(({ assumptions }) => assumptions.includes("barrier: all openings are deducted"));
    expect(said).toEqual([true, false, false]);
    const net = ({ answers }: typeof all): number => answers.lines.find(({ item }) => item === "barrier")?.net.toNumber("gal") ?? 0;
    expect(net(all)).toBe(net(none));
    // Openings of 48 + 40 + 12 = 100 ft2, none of which is 100 ft2 by itself: two films of 18 mil on 100 ft2 more, 231 in3 a gallon.
    expect(net(large) - net(none)).toBeCloseTo((2 * 0.018 * 100 * 144) / 231, 9);
    expect(all.assumptions.some((text) => text.startsWith("barrier: taken over the faces as they were measured, and into the openings all round"))).toBe(true);
  });
});

describe("corner units", () => {
  const plain = {
    measuredTo: "backing",
    elevations: [{ name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] }],
    layers: [
      { kind: "studs", spacing: "16 in" },
      { kind: "setting bed", name: "mortar", bed: { from: "thickness", thickness: "1/2 in" }, backButter: "1/8 in", butteredShare: "100 %" },
      { kind: "units", name: "units", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", unitThickness: "1 in", headJoint: "3/8 in", bedJoint: "3/8 in" },
    ],
    packs: { mortar: { bag: "50 lb", yield: "0.5 ft3", waterLow: "5 qt", waterHigh: "6 qt" }, units: { pieces: 40 } },
    allowances: { mortar: { waste: "10 %" }, units: { waste: "10 %" } },
  };

  const lineOfPlain = (more: object, item: string): ReturnType<typeof taken>["answers"]["lines"][number] | undefined => taken({ ...plain, ...more }).answers.lines.find((line) => line.item === item);

  it("of a wall without corners are none, so that spacers are those of the flat units; one wall is one lot", () => {
    // 40 x 8 ft at three units to the square foot, two spacers each.
    const spaced = { layers: plain.layers.map((layer) => (layer.kind === "units" ? { ...layer, spacers: { name: "spacers", perUnit: 2, reuseShare: "0 %" } } : layer)) };
    expect([lineOfPlain(spaced, "units")?.net, lineOfPlain(spaced, "spacers")?.net].map(String)).toEqual(["960", "1920"]);
    expect(lineOfPlain({}, "units")?.solution.id).toBe("layout.units-for-face");
  });

  it("have their beads along outside and inside corners, and over a door that has no sill", () => {
    const bead = (along: readonly string[], more: object, beyond: object = {}): string => String(lineOfPlain({
      elevations: plain.elevations.map((one) => ({ ...one, ...more })),
      layers: [...plain.layers.map((layer) => (layer.kind === "units" ? { ...layer, corners: { name: "corner units", longLeg: "8 in", shortLeg: "4 in" } } : layer)), { kind: "trim", name: "bead", along, lap: "0 in", ...beyond }],
      packs: { ...plain.packs, "corner units": { pieces: 10 }, bead: { length: "10 ft" } }, allowances: { ...plain.allowances, "corner units": { waste: "5 %" }, bead: { waste: "0 %" } },
    }, "bead")?.net);
    const cornered = { outsideCorners: [{ height: "8 ft", otherFace: "unclad", count: 2 }], insideCorners: [{ height: "7 ft", otherFace: "unclad" }] };
    expect([bead(["outside corners"], cornered), bead(["inside corners"], cornered), bead(["base"], cornered)]).toEqual(["16 ft", "7 ft", "40 ft"]);
    // 3 ft and 4 in past either end; the round window has no head.
    const round = { shape: { kind: "round", diameter: "2 ft" }, returnDepth: "0 in", returnUnits: "flat", toBase: false };
    const door = { outsideCorners: [{ height: "8 ft", otherFace: "unclad" }], openings: [{ shape: { kind: "rectangle", width: "3 ft", height: "7 ft" }, returnDepth: "0 in", returnUnits: "flat", toBase: true }, round] };
    expect(Number.parseFloat(bead(["sills", "heads"], door, { beyond: "4 in" }))).toBeCloseTo(3 + 8 / 12, 6);
  });

  it("are asked for where there is a corner, and only there", () => {
    expect(faults(takeOff.try(plain))).toEqual([]);
    const cornered = { ...plain, elevations: plain.elevations.map((one) => ({ ...one, outsideCorners: [{ height: "8 ft", otherFace: "unclad" }] })) };
    expect(faults(takeOff.try(cornered))).toEqual(["missing layers.2.corners"]);
  });
});

describe("a line", () => {
  it("names what its own last step stands on", () => {
    for (const { item, basis, solution } of taken(entranceInFeet).answers.lines) if (solution.steps.length > 0) expect(basis, item).toEqual(solution.steps[solution.steps.length - 1]?.basis);
  });
});

describe("prices", () => {
  // 40 x 8 ft in boards of 32 ft2: ten of each.
  const foam = (...names: readonly string[]): object => ({
    measuredTo: "backing",
    elevations: [{ name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] }],
    layers: names.map((name) => ({ kind: "foam board", name, boardWidth: "4 ft", boardHeight: "8 ft" })), packs: {}, allowances: Object.fromEntries(names.map((name) => [name, { waste: "0 %" }])),
  });
  const priced = (prices: object, ...names: readonly string[]): object => ({ ...foam(...(names.length === 0 ? ["foam"] : names)), prices: { smallest: "0.01 USD", ...prices } });
  const cost = (job: object): readonly (string | undefined)[] => {
    const found = taken(job).answers.cost;
    return [found?.subtotal, found?.allowance, found?.tax, found?.total];
  };
  const each = (amount: string, more: object = {}): object => ({ each: `${amount} USD`, ...more });

  it("are told as numbers too, and not where there is no allowance", () => {
    const amounts = (more: object): ReturnType<typeof taken>["answers"]["cost"] => taken(priced({ items: { foam: each("10.00", { taxed: true }) }, tax: "5 %", ...more })).answers.cost;
    const all = amounts({ allowance: { share: "10 %", taxed: false } })?.amounts;
    expect([all?.subtotal, all?.allowance, all?.tax, all?.total].map(String)).toEqual(["100", "10", "5", "115"]);
    expect(amounts({})?.amounts).not.toHaveProperty("allowance");
  });

  it("need no word of tax where there is none, and list what has no price", () => {
    const job = priced({ items: { foam: each("10.00") } }, "foam", "second foam");
    expect(cost(job)).toEqual(["100.00 USD", undefined, undefined, "100.00 USD"]);
    const { answers, assumptions } = taken(job);
    expect([answers.cost?.unpriced, answers.prices?.map(({ item, taxed }) => [item, taxed])]).toEqual([["second foam"], [["foam", false]]]);
    expect(assumptions.some((text) => text.startsWith("each price is rounded once"))).toBe(true);
    // A name that every object has is a name like any other.
    expect(taken(priced({ items: {} }, "constructor")).answers.cost?.unpriced).toEqual(["constructor"]);
  });

  it("tax what is taxed: a tenth of the lines, of the allowance, of both", () => {
    const taxes = (item: boolean, allowance: boolean): readonly (string | undefined)[] => cost(priced({ items: { foam: each("10.00", { taxed: item }) }, tax: "10 %", allowance: { share: "10 %", taxed: allowance } }));
    expect(taxes(false, false)).toEqual(["100.00 USD", "10.00 USD", "0.00 USD", "110.00 USD"]);
    expect(taxes(false, true)).toEqual(["100.00 USD", "10.00 USD", "1.00 USD", "111.00 USD"]);
    expect(taxes(true, false)).toEqual(["100.00 USD", "10.00 USD", "10.00 USD", "120.00 USD"]);
    expect(taxes(true, true)).toEqual(["100.00 USD", "10.00 USD", "11.00 USD", "121.00 USD"]);
  });

  it("ask for the tax, and name what it is wanted for", () => {
    const asked = (prices: object): readonly string[] => {
      const tried = takeOff.try(priced(prices, "foam", "second foam"));
      return tried.ok ? [] : tried.problems.map(({ code, path, message }) => `${code} ${path.join(".")} ${message.includes("second foam") ? "second foam" : message.includes("foam") ? "foam" : message.includes("allowance") ? "allowance" : ""}`);
    };
    const [plainly, taxed] = [each("10.00", { taxed: false }), each("10.00", { taxed: true })];
    expect(asked({ items: { foam: plainly } })).toEqual([]);
    expect(asked({ items: { foam: taxed } })).toEqual(["missing prices.tax foam"]);
    expect(asked({ items: { foam: plainly, "second foam": taxed } })).toEqual(["missing prices.tax second foam"]);
    expect(asked({ items: { foam: plainly }, allowance: { share: "5 %", taxed: true } })).toEqual(["missing prices.tax allowance"]);
    expect(asked({ items: { foam: plainly }, allowance: { share: "5 %", taxed: false } })).toEqual([]);
  });

  it("are of items that there are, and what is wrong with one is told once, for its spare stock too", () => {
    expect(faults(takeOff.try(priced({ items: { foam: each("1"), tiles: each("1") } })))).toEqual(["unknown prices.items.tiles"]);
    const wrong = faults(takeOff.try({ ...priced({ items: { foam: { perPack: "1 USD" } } }), spare: { foam: "10 %" } }));
    expect(wrong).toEqual(["unknown prices.items.foam.perPack"]);
    // Ten boards and one to spare.
    expect(cost({ ...priced({ items: { foam: each("10.00") } }), spare: { foam: "10 %" } })[3]).toBe("110.00 USD");
  });
});

describe("openings and weights", () => {
  const window = (width: string, height: string): object => ({ ...entranceInFeet, elevations: entranceInFeet.elevations.map((one) => (one.name === "bay" ? { ...one, openings: [{ shape: { kind: "rectangle", width, height }, returnDepth: "0 in", returnUnits: "flat", toBase: false }] } : one)) });

  it("may be as wide or as high as the wall, but leave some of it", () => {
    // The bay is 12 ft wide and 10 ft high.
    const told = (width: string, height: string): readonly string[] => faults(takeOff.try(window(width, height)));
    expect([told("12 ft", "4 ft"), told("4 ft", "10 ft"), told("12.1 ft", "4 ft")]).toEqual([[], [], ["refused elevations.2.openings.0.shape"]]);
    expect(told("12 ft", "10 ft")).toContain("refused elevations.2.openings");
  });

  it("of one item are the weight of all", () => {
    const weigh = (perPack: object): ReturnType<typeof taken>["answers"] => taken({ ...entranceInFeet, weights: { perPack } }).answers;
    // 25 boards of 70 lb.
    expect([weigh({ sheathing: "70 lb" }).deliveredWeight, weigh({}).deliveredWeight].map(String)).toEqual(["1750 lb", "undefined"]);
  });
});

describe("hours", () => {
  const answers = (count: number): ReturnType<typeof taken>["answers"] => taken({ ...entranceInFeet, labour: { ...entranceInFeet.labour, tasks: entranceInFeet.labour?.tasks.slice(1, 1 + count) } }).answers;

  it("are added up from one task on, and are none without a task", () => {
    // 0.2 h a foot of corner edge, a quarter more here, at 80 %: the paid hours are a quarter more.
    const { labour, hours } = answers(1);
    expect([labour?.length, hours?.toolHours.toString()]).toEqual([1, labour?.[0]?.toolHours.toString()]);
    expect((hours?.paidHours.toNumber("h") ?? 0) / (hours?.toolHours.toNumber("h") ?? 1)).toBeCloseTo(1.25, 9);
    const none = answers(0);
    expect([none.labour, none.hours]).toEqual([[], undefined]);
  });
});

describe("a job", () => {
  it("has an elevation or a column", () => {
    const empty = takeOff.try({ ...entranceInFeet, elevations: [], columns: [] });
    expect(faults(empty)).toContain("refused elevations");
  });

  it("says of each line whether its allowance is waste or loss", () => {
    const is = Object.fromEntries(taken(entranceInFeet).answers.lines.map(({ item, allowanceIs, allowance }) => [item, `${String(allowanceIs)} ${String(allowance)}`]));
    expect([is.barrier, is.sheathing]).toEqual(["lossShare 20 %", "waste 10 %"]);
  });
});
