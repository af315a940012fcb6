// Records by the clock for tests, made without the package.

/** Readings every so many hours from a time in UTC; the times are written in UTC. */
export function readingsFrom(start: string, temperatures: readonly string[], hours = 1): readonly { readonly at: string; readonly temperature: string }[] {
  return temperatures.map((temperature, index) => ({ at: `${new Date(Date.parse(start) + index * hours * 3_600_000).toISOString().slice(0, 16)}Z`, temperature }));
}

/** The same temperature so many times. */
export function steady(temperature: string, count: number): readonly string[] {
  return Array.from({ length: count }, () => temperature);
}
