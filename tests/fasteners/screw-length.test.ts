import { describe, expect, it } from "vitest";
import { screwLength } from "../../src/fasteners/screw-length.js";
import { vector } from "../support/vectors.js";

const screw = { layers: "5/8 in", steel: "0.0346 in", threadsPerInch: "18 /in", leastPenetration: "0 in", pointLength: "0 in" } as const;

describe("screwLength", () => {
  it("counts the threads of the IRC 2018, Table R703.3(2) note a", () => {
    expect(String(screwLength.definition.constants.leastThreads.value)).toBe(vector("rule-three-threads-33mil").expected.threadsMin);
    expect(screwLength.definition.cautions.join(" ")).toContain("33 mil");
  });

  // 3/18 = 1/6 in; 5/8 + 0.0346 + 1/6 = 0.625 + 0.0346 + 0.166666... = 0.826266... in.
  it("three threads of a fine screw are a sixth of an inch", () => {
    const answers = screwLength(screw);
    expect(answers.threads.to("in").times(6).toFixed(12)).toBe("1.000000000000");
    expect(answers.length.to("in").toFixed(6)).toBe("0.826267");
  });

  // 3/8 = 0.375 in: at 8 threads to the inch the two rules are one.
  it("three threads at 8 to the inch are 3/8 in", () => {
    const answers = screwLength({ ...screw, threadsPerInch: "8 /in", leastPenetration: "3/8 in" });
    expect(answers.threads.toString()).toBe("0.375 in");
    expect(answers.length.toString()).toBe("1.0346 in");
  });

  it("the greater of threads and least penetration governs, and is named", () => {
    const governed = (input: Parameters<typeof screwLength>[0]): string | undefined => screwLength.solve(input).steps.find(({ name }) => name === "penetration")?.governedBy;
    expect(governed({ ...screw, leastPenetration: "3/8 in" })).toBe("leastPenetration");
    expect(governed({ ...screw, leastPenetration: "1/8 in" })).toBe("threads");
  });

  // 5/8 + 0.0346 + 3/8 in, though three fine threads would do with 1/6 in.
  it("the greater one counts", () => {
    expect(screwLength({ ...screw, leastPenetration: "3/8 in" }).length.toString()).toBe("1.0346 in");
  });

  it("a drill point is no thread: it adds its whole length", () => {
    const longer = screwLength({ ...screw, pointLength: "1/4 in" }).length.to("in").minus(screwLength(screw).length.to("in"));
    expect(longer.toFixed(30)).toBe(`0.25${"0".repeat(28)}`);
  });

  // Pitch 1 mm is 1 thread to the millimetre: 15 + 1 + 3 = 19 mm.
  it("takes millimetres", () => {
    expect(screwLength({ layers: "15 mm", steel: "1 mm", threadsPerInch: "1 /mm", leastPenetration: "0 mm", pointLength: "0 mm" }).length.toString()).toBe("19 mm");
  });

  it("asks for the point and the penetration, and refuses less than none", () => {
    const bare = screwLength.try({ layers: "5/8 in", steel: "0.0346 in", threadsPerInch: "18 /in" });
    expect(bare.ok ? [] : bare.problems.map(({ code, path }) => [code, ...path])).toEqual([["missing", "leastPenetration"], ["missing", "pointLength"]]);
    expect(screwLength.try({ ...screw, pointLength: "-1 in", threadsPerInch: "0 /in" })).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["threadsPerInch"] }, { code: "tooLow", path: ["pointLength"] }] });
  });
});
