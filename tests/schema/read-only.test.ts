// A list that was read is frozen; what the caller handed over is not, least of all where it is no list.
import { describe, expect, it } from "vitest";
import { nested } from "../../src/schema/nested.js";
import * as z from "zod/mini";
import { workWindows } from "../../src/timing/index.js";
import { readOnly } from "../../src/schema/fields.js";

const reads = nested(z.strictObject({ names: readOnly(z.array(z.string())) }));

describe("readOnly", () => {
  it("freezes what was read, and leaves the caller's own list alone", () => {
    const names = ["north"];
    const read = reads["~standard"].validate({ names });
    expect("value" in read && Object.isFrozen(read.value.names)).toBe(true);
    expect(Object.isFrozen(names)).toBe(false);
  });

  it("leaves alone what is no list, and says so", () => {
    for (const wrong of [{ own: 1 }, new Float64Array(4), new Map(), ["north", 3]]) {
      const read = reads["~standard"].validate({ names: wrong });
      expect("issues" in read).toBe(true);
      expect(Object.isFrozen(wrong)).toBe(false);
    }
  });

  it("in a record of readings as well", () => {
    const readings = new Float64Array(4);
    const tried = workWindows.try({ rule: "Arrhenius", reference: "70 degF", record: { every: "1 h", readingIs: "momentary", readings }, holds: [] });
    expect(tried.ok ? [] : tried.problems.filter(({ path }) => path.join(".") === "record.readings").map(({ code }) => code)).toEqual(["wrongKind"]);
  });
});
