// One by one what comes in batches: in order, whoever asks and however often, and at once where it is at hand.
import { describe, expect, it } from "vitest";
import { Unrolled } from "../../../src/takeoff/rows/unrolled.js";

/** Batches of numbers, and how far they have been asked for. */
function source(...batches: readonly (readonly number[])[]): { readonly unrolled: Unrolled<number>; readonly seen: { begun: number; given: number; closed: boolean } } {
  const seen = { begun: 0, given: 0, closed: false };
  function* batchOf(numbers: readonly number[]): Generator<number, void> {
    for (const one of numbers) {
      if (one < 0) throw new Error(`no ${String(one)}`);
      seen.given += 1;
      yield one;
    }
  }
  async function* all(): AsyncGenerator<Iterator<number>, void, undefined> {
    try {
      for (const numbers of batches) {
        seen.begun += 1;
        await Promise.resolve();
        yield batchOf(numbers);
      }
    } finally {
      seen.closed = true;
    }
  }
  return { unrolled: new Unrolled(all()), seen };
}

async function rest(unrolled: Unrolled<number>): Promise<readonly number[]> {
  const found: number[] = [];
  for await (const one of unrolled) found.push(one);
  return found;
}

const done = { done: true, value: undefined };
const one = (value: number): object => ({ done: false, value });

describe("what comes", () => {
  it("comes in order, over batches that are empty too, and then is done for good", async () => {
    const { unrolled, seen } = source([1, 2], [], [3], []);
    expect(seen.begun).toBe(0);
    expect(await rest(unrolled)).toEqual([1, 2, 3]);
    expect([await unrolled.next(), await unrolled.next()]).toEqual([done, done]);
    expect(seen).toEqual({ begun: 4, given: 3, closed: true });
  });

  it("is not read ahead", async () => {
    const { unrolled, seen } = source([1, 2], [3]);
    await unrolled.next();
    expect(seen).toEqual({ begun: 1, given: 1, closed: false });
    await unrolled.next();
    expect(seen).toEqual({ begun: 1, given: 2, closed: false });
  });

  it("comes at once where it is at hand, and not where others wait", async () => {
    const { unrolled, seen } = source([1, 2, 3], [4]);
    const first = unrolled.next();
    const second = unrolled.next();
    expect(seen.given).toBe(0);
    expect([await first, await second]).toEqual([one(1), one(2)]);
    await Promise.resolve();
    const third = unrolled.next();
    expect(seen.given).toBe(3);
    expect(await third).toEqual(one(3));
  });

  it("comes in order where several are asked for together, beyond the end as well", async () => {
    const { unrolled } = source([1, 2], [3]);
    const asked = Array.from({ length: 5 }, () => unrolled.next());
    expect(await Promise.all(asked)).toEqual([one(1), one(2), one(3), done, done]);
  });

  it("comes in order where one is asked for when another has come and a third still waits", async () => {
    const { unrolled } = source([1, 2, 3, 4]);
    const [first, second] = [unrolled.next(), unrolled.next()];
    expect(await first).toEqual(one(1));
    const third = unrolled.next();
    expect([await second, await third]).toEqual([one(2), one(3)]);
  });

  it("comes in order where some are asked for while the next batch is waited for", async () => {
    const { unrolled } = source([1], [2, 3, 4]);
    await unrolled.next();
    expect(await Promise.all([unrolled.next(), unrolled.next(), unrolled.next()])).toEqual([one(2), one(3), one(4)]);
  });
});

describe("the end before the end", () => {
  it("closes the batches", async () => {
    const { unrolled, seen } = source([1, 2], [3]);
    await unrolled.next();
    expect(await unrolled.return()).toEqual(done);
    expect(seen.closed).toBe(true);
    expect(await unrolled.next()).toEqual(done);
    expect(seen.given).toBe(1);
  });

  it("waits for what was asked before it", async () => {
    const { unrolled } = source([1, 2]);
    expect(await Promise.all([unrolled.next(), unrolled.return(), unrolled.next()])).toEqual([one(1), done, done]);
  });
});

describe("what fails", () => {
  it("fails the one that was asked for, closes the batches, and ends", async () => {
    const { unrolled, seen } = source([1, -1, 2], [3]);
    await unrolled.next();
    await expect(unrolled.next()).rejects.toThrow("no -1");
    expect(seen.closed).toBe(true);
    expect(await unrolled.next()).toEqual(done);
  });

  it("ends though more could be had of its batch", async () => {
    const answers = [{ done: false, value: 1 }, undefined, { done: false, value: 2 }];
    const batch: Iterator<number, void> = {
      next() {
        const answer = answers.shift();
        if (answer === undefined) throw new Error("torn");
        return answer as IteratorYieldResult<number>;
      },
    };
    const unrolled = new Unrolled<number>((async function* batches(): AsyncGenerator<Iterator<number, void>, void, undefined> {
      yield await Promise.resolve(batch);
    })());
    expect(await unrolled.next()).toEqual(one(1));
    await expect(unrolled.next()).rejects.toThrow("torn");
    expect(await unrolled.next()).toEqual(done);
  });

  it("does all that where it is the first of a batch", async () => {
    const { unrolled, seen } = source([-1, 2], [3]);
    const asked = [unrolled.next(), unrolled.next()];
    await expect(asked[0]).rejects.toThrow("no -1");
    expect(await asked[1]).toEqual(done);
    expect(seen).toEqual({ begun: 1, given: 0, closed: true });
  });

  it("lets others be asked for at once again", async () => {
    const { unrolled, seen } = source([1, 2, 3]);
    const failing = new Unrolled<number>((async function* broken(): AsyncGenerator<Iterator<number>, void, undefined> {
      await Promise.reject(new Error("torn"));
      yield [1][Symbol.iterator]();
    })());
    await expect(failing.next()).rejects.toThrow("torn");
    expect(await failing.next()).toEqual(done);
    await unrolled.next();
    await Promise.resolve();
    void unrolled.next();
    void unrolled.next();
    expect(seen.given).toBe(3);
  });
});
