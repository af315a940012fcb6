// Random elevations, on whole feet, held against what a layout must be whatever way it is found: counted foot by foot.
import fc from "fast-check";
import { expect, it } from "vitest";
import { movementLayout } from "../../src/movement/movement-layout.js";

const wide = 60;
const high = 40;

const openings = fc.array(
  fc.record({ left: fc.integer({ min: 0, max: wide - 1 }), bottom: fc.integer({ min: 0, max: high - 1 }), width: fc.integer({ min: 1, max: 20 }), height: fc.integer({ min: 1, max: 12 }) }),
  { maxLength: 5 },
);

const jobs = fc.record({
  most: fc.integer({ min: 3, max: 25 }),
  backing: fc.array(fc.integer({ min: 0, max: wide }), { maxLength: 5 }),
  floors: fc.array(fc.integer({ min: 1, max: high - 1 }), { maxLength: 4 }),
  openings,
});

const feet = (value: number): `${number} ft` => `${value} ft`;

it("honours all joints of the backing and all floor lines, keeps to the spacing with as few joints as may be, covers the wall, and measures joints rightly", () => {
  fc.assert(
    fc.property(jobs, ({ most, backing, floors, openings: given }) => {
      const inside = given.map((one) => ({ ...one, width: Math.min(one.width, wide - one.left), height: Math.min(one.height, high - one.bottom) }));
      const { upright, level, panels } = movementLayout({
        wall: { kind: "rectangle", width: feet(wide), height: feet(high) },
        leftEnd: { at: "inside corner" },
        rightEnd: { at: "inside corner" },
        openings: inside.map(({ left, bottom, width, height }) => ({ shape: { kind: "rectangle", width: feet(width), height: feet(height) }, left: feet(left), bottom: feet(bottom) })),
        floorLines: floors.map(feet),
        backingJoints: { upright: backing.map(feet), level: [] },
        mostAcross: feet(most),
        mostUp: feet(most),
      });
      // Foot by foot: whether half a foot of a joint lies in an opening, or along its edge, where there is no wall on one side.
      const openAt = (x: number, y: number): boolean => inside.some(({ left, bottom, width, height }) => left <= x && x <= left + width && bottom < y && y < bottom + height);
      const openBeside = (x: number, y: number): boolean => inside.some(({ left, bottom, width, height }) => left < x && x < left + width && bottom <= y && y <= bottom + height);
      const closed = (of: number, open: (step: number) => boolean): number => Array.from({ length: of }, (_, step) => step + 0.5).filter((step) => !open(step)).length;
      const uprightLength = (x: number): number => closed(high, (y) => openAt(x, y));
      const levelLength = (y: number): number => closed(wide, (x) => openBeside(x, y));

      for (const x of new Set([0, wide, ...backing])) expect(upright.filter(({ at }) => at.toNumber("ft") === x).map(({ length }) => length.toNumber("ft"))).toEqual(uprightLength(x) === 0 ? [] : [uprightLength(x)]);
      for (const y of new Set(floors)) expect(level.filter(({ at }) => at.toNumber("ft") === y).map(({ length }) => length.toNumber("ft"))).toEqual(levelLength(y) === 0 ? [] : [levelLength(y)]);

      // Panels tell all lines, those too that lie in openings.
      const lines = (places: readonly number[]): readonly number[] => [...new Set(places)].sort((a, b) => a - b);
      const across = lines([...panels.map(({ left }) => left.toNumber("ft")), wide]);
      const up = lines([...panels.map(({ bottom }) => bottom.toNumber("ft")), high]);
      for (const [found, fixed] of [[across, lines([0, wide, ...backing])], [up, lines([0, high, ...floors])]] as const) {
        const gaps = found.slice(1).map((to, index) => to - (found[index] ?? 0));
        expect(Math.max(...gaps)).toBeLessThanOrEqual(most + 1e-9);
        // Between two fixed lines so many parts as the spacing asks for, and no more.
        const parts = fixed.slice(1).reduce((total, to, index) => total + Math.ceil((to - (fixed[index] ?? 0)) / most), 0);
        expect(gaps).toHaveLength(parts);
      }
      const area = panels.reduce((total, { width, height }) => total + width.toNumber("ft") * height.toNumber("ft"), 0);
      expect(area).toBeCloseTo(wide * high, 6);
    }),
    { numRuns: 60 },
  );
}, 30_000);
