/** So many rows are worked out together at the most. */
export const mostRows = 256;

/**
 * Rows in blocks. What has to be waited for comes one by one; what is at hand is read ahead, a row at first and then more
 * and more, so that the first results come at once. What breaks off is given as far as it came.
 */
export async function* blocksOf<Row>(rows: Iterable<Row> | AsyncIterable<Row>): AsyncGenerator<readonly Row[], void, undefined> {
  if (Symbol.asyncIterator in rows) {
    for await (const row of rows) yield [row];
    return;
  }
  let [block, most]: [Row[], number] = [[], 1];
  try {
    for (const row of rows) {
      block.push(row);
      if (block.length < most) continue;
      const full = block;
      [block, most] = [[], Math.min(most * 2, mostRows)];
      yield full;
    }
  } catch (error) {
    if (block.length > 0) yield block;
    throw error;
  }
  if (block.length > 0) yield block;
}
