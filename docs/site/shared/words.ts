/** With a capital at its head. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** `temperatureDifference` as `temperature difference`, `board-layout` as `board layout`. */
export function plainWords(name: string): string {
  return name.replaceAll("-", " ").replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** `1 page`, `2 pages`. */
export function several(count: number, one: string, many = `${one}s`): string {
  return `${String(count)} ${count === 1 ? one : many}`;
}
