import { describe, expect, it } from "vitest";
import { boardEdgesOnStuds } from "../../src/fasteners/board-edges-on-studs.js";

const small = { acrossStuds: "3 ft", alongStuds: "5 ft", studSpacing: "16 in" } as const;

describe("boardEdgesOnStuds", () => {
  it("4 ft on studs at 16 in is three whole spacings: no backing, whatever is said of it", () => {
    for (const edgesBacked of [true, false]) {
      const answers = boardEdgesOnStuds({ ...small, acrossStuds: "4 ft", edgesBacked });
      expect(answers.edgesMeetStuds).toBe(true);
      expect(answers.backing.toString()).toBe("0 ft");
      expect(boardEdgesOnStuds.solve({ ...small, acrossStuds: "4 ft", edgesBacked }).cautions.join(" ")).not.toContain("Backing");
    }
  });

  it("3 ft on studs at 16 in is 2.25 spacings: backed, one length of the board each", () => {
    const solution = boardEdgesOnStuds.solve({ ...small, edgesBacked: true });
    expect(solution.answers.edgesMeetStuds).toBe(false);
    expect(solution.answers.backing.toString()).toBe("5 ft");
    expect(solution.cautions.join(" ")).toContain("once a board");
  });

  it("96 in on studs at 19.2 in is 5 spacings exactly, 48 in is not", () => {
    expect(boardEdgesOnStuds({ ...small, acrossStuds: "96 in", studSpacing: "19.2 in", edgesBacked: false }).edgesMeetStuds).toBe(true);
    expect(boardEdgesOnStuds.try({ ...small, acrossStuds: "48 in", studSpacing: "19.2 in", edgesBacked: false }).ok).toBe(false);
  });

  it("metric and inch modules do not meet: 1200 mm on studs at 16 in", () => {
    // 16 in is 406.4 mm; 1200/406.4 = 2.95.
    expect(boardEdgesOnStuds({ ...small, acrossStuds: "1200 mm", edgesBacked: true }).edgesMeetStuds).toBe(false);
    expect(boardEdgesOnStuds({ ...small, acrossStuds: "1200 mm", studSpacing: "400 mm", edgesBacked: false }).edgesMeetStuds).toBe(true);
  });
});

describe("boardEdgesOnStuds refuses", () => {
  it("an edge on nothing, and says what to do", () => {
    const bare = boardEdgesOnStuds.try({ ...small, edgesBacked: false });
    expect(bare).toMatchObject({ ok: false, problems: [{ code: "refused", path: ["edgesBacked"] }] });
    const message = bare.ok ? "" : (bare.problems[0]?.message ?? "");
    expect(message).toContain("would hit no steel");
    expect(message).toContain("back the edges");
    expect(message).toContain("cut the board to 32 in");
  });

  it("a board narrower than one spacing, which no cut helps", () => {
    const narrow = boardEdgesOnStuds.try({ ...small, acrossStuds: "1 ft", edgesBacked: false });
    expect(narrow).toMatchObject({ ok: false, problems: [{ code: "refused", path: ["edgesBacked"] }] });
    expect(narrow.ok ? "" : narrow.problems[0]?.message).not.toContain("cut the board");
  });

  it("to assume that edges are backed", () => {
    expect(boardEdgesOnStuds.try(small)).toMatchObject({ ok: false, problems: [{ code: "missing", path: ["edgesBacked"] }] });
    expect(boardEdgesOnStuds.try({ ...small, edgesBacked: "yes" })).toMatchObject({ ok: false, problems: [{ code: "notAChoice", path: ["edgesBacked"] }] });
  });
});
