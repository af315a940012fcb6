/** The part of the address that holds inputs begins so; a place in the page does not. */
const mark = "#?";

/** The inputs that the address holds, under their names; nothing where it holds none. */
export function fromAddress(): ReadonlyMap<string, string> | undefined {
  return location.hash.startsWith(mark) ? new Map(new URLSearchParams(location.hash.slice(mark.length))) : undefined;
}

/** Inputs as the end of an address. They stand behind `#`, so that no host gets to see them. */
export function addressOf(inputs: ReadonlyMap<string, string>): string {
  return mark + new URLSearchParams([...inputs].filter(([, text]) => text !== "")).toString();
}
