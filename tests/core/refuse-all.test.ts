// All refusals of a step end the run together, in their order; none lets it go on.
import { describe, expect, it } from "vitest";
import { composed } from "../../src/core/composed.js";
import { refusal, refuseAll } from "../../src/core/refuse-all.js";

const crates = composed({
  id: "demo.crates",
  title: "Crates on a shelf",
  given: { crates: { is: "count", symbol: "n", says: "crates" }, shelves: { is: "count", symbol: "m", says: "shelves" } },
  run: ({ crates: wanted, shelves }, work) => {
    refuseAll([
      ...(wanted.toNumber() > 9 ? [refusal(["crates"], wanted.toString(), { kind: "words", words: "at most nine" })] : []),
      ...(shelves.toNumber() > 2 ? [refusal(["shelves"], shelves.toString(), { kind: "words", words: "at most two" })] : []),
    ], work);
    return { stacked: true };
  },
});

describe("refuseAll", () => {
  it("ends the run with all there are", () => {
    const tried = crates.try({ crates: 10, shelves: 3 });
    expect(tried.ok ? [] : tried.problems.map(({ code, path, given, wanted }) => [code, path.join(), given, wanted])).toEqual([
      ["refused", "crates", "10", { kind: "words", words: "at most nine" }], ["refused", "shelves", "3", { kind: "words", words: "at most two" }],
    ]);
  });

  it("ends it with one", () => {
    const tried = crates.try({ crates: 9, shelves: 3 });
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join())).toEqual(["shelves"]);
  });

  it("lets it go on where there is none", () => {
    expect(crates({ crates: 9, shelves: 2 })).toEqual({ stacked: true });
  });
});
