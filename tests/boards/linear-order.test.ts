import { describe, expect, it } from "vitest";
import { linearOrder } from "../../src/boards/linear-order.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("linearOrder", () => {
  it("orders the track of the textbook (Pearson, Estimating in Building Construction, 7th ed., p. 199)", () => {
    const row = vector("textbook-track-3");
    expect(row.inputs).toEqual({ length: "20.667 ft", runs: "2", piece: "20 ft", waste: "8 %" });
    // Top and bottom of 20 ft 8 in: 41 ft 4 in; x 1.08 = 44.64 ft; / 20 = 2.232
    const track = linearOrder({ length: "41 ft 4 in", pieceLength: "20 ft", lap: "0 in", waste: "8 %" });
    expect(track.withWaste.toString()).toBe("44.64 ft");
    expectPrinted(track.toOrder.to(), row.expected.pieces);
  });

  it("gives the first piece its whole length and each further one its length less the lap", () => {
    // 10 ft pieces with 4 in laps: n pieces cover 10 + (n - 1) x 29/3 ft. Seven cover 10 + 58 = 68 ft, six 58 ft 4 in.
    const pieces = (length: string): string => linearOrder({ length: length as "1 ft", pieceLength: "10 ft", lap: "4 in", waste: 0 }).placed.toString();
    expect(pieces("58 ft 4 in")).toBe("6");
    expect(pieces("58 ft 4.001 in")).toBe("7");
    expect(pieces("68 ft")).toBe("7");
    expect(pieces("68.001 ft")).toBe("8");
  });

  it("takes one piece for a run that is no longer than a piece, however short", () => {
    const run = { pieceLength: "10 ft", lap: "4 in", waste: 0 } as const;
    expect(linearOrder({ length: "10 ft", ...run }).toOrder.toString()).toBe("1");
    expect(linearOrder({ length: "4 in", ...run }).toOrder.toString()).toBe("1");
    expect(linearOrder({ length: "1 in", ...run }).toOrder.toString()).toBe("1");
    expect(linearOrder({ length: "1 in", ...run, waste: "50 %" }).placed.toString()).toBe("1");
  });

  it("puts waste on the length before the laps are taken off", () => {
    // 58 ft 4 in x 1.05 = 61 ft 3 in: (61.25 - 1/3) / (29/3) = 6.30
    const order = linearOrder({ length: "58 ft 4 in", pieceLength: "10 ft", lap: "4 in", waste: "5 %" });
    expect([order.placed.toString(), order.withWaste.toString(), order.toOrder.toString()]).toEqual(["6", "61.25 ft", "7"]);
  });

  it("gives the same pieces in millimetres, exactly on a whole number", () => {
    // 3 m pieces with 100 mm laps: five cover 3 + 4 x 2.9 = 14.6 m
    const metric = linearOrder({ length: "14.6 m", pieceLength: "3 m", lap: "100 mm", waste: 0 });
    expect([metric.placed.toString(), metric.cover.toString()]).toEqual(["5", "2.9 m"]);
  });

  it("refuses a lap as long as the piece", () => {
    const tried = linearOrder.try({ length: "64 ft", pieceLength: "10 ft", lap: "10 ft", waste: 0 });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")])).toEqual([["tooLow", "cover"]]);
    expect(linearOrder.try({ length: "64 ft", pieceLength: "10 ft", lap: "119.9 in", waste: 0 }).ok).toBe(true);
  });

  it("refuses nought and a waste that is none", () => {
    const tried = linearOrder.try({ length: "0 ft", pieceLength: "0 ft", lap: "-1 in", waste: "-1 %" });
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["length", "pieceLength", "lap", "waste"]);
  });
});
