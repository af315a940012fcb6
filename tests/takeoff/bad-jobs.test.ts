// What is wrong with a job comes back all at once, each problem under its path.
import { describe, expect, it } from "vitest";
import { type Job, takeOff } from "../../src/takeoff/index.js";

const good: Job = {
  measuredTo: "backing",
  elevations: [{ name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] }],
  layers: [
    { kind: "studs", spacing: "16 in" },
    { kind: "boards", name: "sheathing", acrossStuds: "4 ft", alongStuds: "8 ft", edgesBacked: false, screwSpacing: "8 in" },
  ],
  packs: { "sheathing screws": { pieces: 1000 } },
  allowances: { sheathing: { waste: "10 %" }, "sheathing screws": { waste: "5 %" } },
};

/** The problems without what the input is, which is held by tests/schema. */
function problemsOf(job: unknown): readonly string[] {
  const tried = takeOff.try(job);
  return tried.ok ? [] : tried.problems.map(({ code, message, says }) => `${code} ${message.replace(` (${says})`, "")}`);
}

it("a good job has none", () => {
  expect(problemsOf(good)).toEqual([]);
});

describe("a bad job", () => {
  it("names every unread input by its path", () => {
    const problems = problemsOf({ ...good, elevations: [{ name: "north", shape: { kind: "rectangle", width: "40", height: "8 gal" }, openings: [], outsideCorners: [], hight: 1 }], measuredTo: "paint" });
    expect(problems).toHaveLength(4);
    expect(problems.join("\n")).toContain('noUnit elevations[0].shape.width: "40" has no unit');
    expect(problems.join("\n")).toContain('wrongDimension elevations[0].shape.height: "8 gal" is a volume');
    expect(problems.join("\n")).toContain("unknown elevations[0].hight: is not known here");
    expect(problems.join("\n")).toContain('notAChoice measuredTo: "paint" is not offered; write one of backing, stoneFace');
  });

  it("refuses a board that meets no stud", () => {
    const layers = [{ kind: "studs", spacing: "16 in" }, { kind: "boards", name: "sheathing", acrossStuds: "5 ft", alongStuds: "3 ft", edgesBacked: false, screwSpacing: "8 in" }];
    expect(problemsOf({ ...good, layers }).join("\n")).toMatch(/^refused layers\[1\]\.edgesBacked: .* would hit no steel; back the edges/m);
  });

  it("refuses an opening larger than its wall and a corner higher than it", () => {
    const elevations = [{
      name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" },
      openings: [{ shape: { kind: "rectangle", width: "41 ft", height: "4 ft" }, returnDepth: "0 in", returnUnits: "flat" }],
      outsideCorners: [{ height: "9 ft", otherFace: "unclad" }],
    }];
    const problems = problemsOf({ ...good, elevations }).join("\n");
    expect(problems).toContain("refused elevations[0].openings[0].shape: an opening 41 ft wide and 4 ft high: north is 40 ft wide and 8 ft high");
    expect(problems).toContain("refused elevations[0].outsideCorners[0].height: 9 ft: north is 8 ft high");
  });

  it("wants a pack and an allowance for every item, and no others", () => {
    const problems = problemsOf({ ...good, packs: { "sheathing screw": { pieces: 1000 } }, allowances: { sheathing: { waste: "10 %", lossShare: "5 %" } } }).join("\n");
    expect(problems).toContain("missing packs.sheathing screws: is missing; write what a pack holds: pieces");
    expect(problems).toContain("unknown packs.sheathing screw: is not known here; did you mean sheathing screws?");
    expect(problems).toContain("either allowances.sheathing: waste and lossShare exclude each other; give exactly one of waste and lossShare");
    expect(problems).toContain('missing allowances.sheathing screws: is missing; write what is added for waste, such as { "waste": "10 %" }');
  });

  it("a pack that is of the wrong kind says what it wants", () => {
    const problems = problemsOf({ ...good, packs: { "sheathing screws": { volume: "5 gal" } } }).join("\n");
    expect(problems).toContain("missing packs.sheathing screws.pieces: is missing");
    expect(problems).toContain("unknown packs.sheathing screws.volume: is not known here; for sheathing screws there are pieces");
  });

  it("is no job at all: one problem, and no throw", () => {
    for (const value of [undefined, null, 3, "job", []]) expect(problemsOf(value)).toHaveLength(1);
    expect(problemsOf(JSON.parse('{"__proto__": {"layers": []}}')).length).toBeGreaterThan(3);
  });

  it("no layer may name an item that is there already", () => {
    const [studs, boards] = good.layers;
    expect(problemsOf({ ...good, layers: [studs, boards, boards] }).join("\n")).toContain('refused layers[2].name: "sheathing": an item of this name is in the list already');
  });
});
