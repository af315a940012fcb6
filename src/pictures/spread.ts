/**
 * Moves places along a line apart so that labels beside them do not meet: in their order, no nearer than `gap` to each other,
 * between `from` and `until`, and none further from its place than it must be. Where they do not all fit, they stand evenly.
 *
 * @param places - where the labels would stand by themselves, in rising order
 */
export function spread(places: readonly number[], gap: number, from: number, until: number): readonly number[] {
  const step = places.length < 2 ? 0 : Math.min(gap, (until - from) / (places.length - 1));
  // Labels that meet form a block, which lies around the mean of what its labels want; blocks that meet become one.
  const blocks: { first: number; count: number }[] = [];
  for (const place of places) {
    let block = { first: Math.max(from, Math.min(place, until)), count: 1 };
    for (let before = blocks.at(-1); before !== undefined && before.first + before.count * step > block.first + 1e-9; before = blocks.at(-1)) {
      blocks.pop();
      const count = before.count + block.count;
      const wanted = (before.first * before.count + (block.first - before.count * step) * block.count) / count;
      block = { first: Math.max(from, Math.min(wanted, until - (count - 1) * step)), count };
    }
    blocks.push(block);
  }
  return blocks.flatMap(({ first, count }) => Array.from({ length: count }, (_, index) => first + index * step));
}
