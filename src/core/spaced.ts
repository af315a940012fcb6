/** `unitsPerArea` as `units per area`. */
export function spaced(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}
