/** Freezes plain objects and lists all the way down; what is frozen already is left alone. */
export function deepFrozen<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  Object.values(value).forEach(deepFrozen);
  return value;
}
