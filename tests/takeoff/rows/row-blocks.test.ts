// Rows in blocks: few at first, so that something comes at once, then more.
import { expect, it } from "vitest";
import { blocksOf } from "../../../src/takeoff/rows/row-blocks.js";

async function sizes(rows: Iterable<number> | AsyncIterable<number>): Promise<readonly number[]> {
  const found: number[] = [];
  let next = 0;
  for await (const block of blocksOf(rows)) {
    // All rows, in their order.
    for (const row of block) expect(row).toBe(next++);
    found.push(block.length);
  }
  return found;
}

const upTo = (count: number): readonly number[] => Array.from({ length: count }, (_, index) => index);

it("doubles the blocks of what is at hand, up to 256 rows", async () => {
  expect(await sizes(upTo(1100))).toEqual([1, 2, 4, 8, 16, 32, 64, 128, 256, 256, 256, 1100 - 1023]);
});

it("gives no empty block", async () => {
  expect(await sizes([])).toEqual([]);
  expect(await sizes(upTo(7))).toEqual([1, 2, 4]);
  expect(await sizes(upTo(4))).toEqual([1, 2, 1]);
});

it("gives one by one what has to be waited for", async () => {
  async function* late(): AsyncGenerator<number> {
    for (const row of upTo(5)) yield await Promise.resolve(row);
  }
  expect(await sizes(late())).toEqual([1, 1, 1, 1, 1]);
});

it.each([[2, [1, 1]], [3, [1, 2]], [6, [1, 2, 3]], [4, [1, 2, 1]]])("gives what breaks off after %d rows as far as it came", async (count, expected) => {
  function* broken(): Generator<number> {
    yield* upTo(count);
    throw new Error("torn");
  }
  const found: number[] = [];
  const read = async (): Promise<void> => {
    for await (const block of blocksOf(broken())) found.push(block.length);
  };
  await expect(read()).rejects.toThrow("torn");
  expect(found).toEqual(expected);
});

it("closes what it reads from where it is stopped", async () => {
  let closed = false;
  function* source(): Generator<number> {
    try {
      yield* upTo(100);
    } finally {
      closed = true;
    }
  }
  for await (const block of blocksOf(source())) if (block.length === 2) break;
  expect(closed).toBe(true);
});
