/** Text that a browser reads as markup; made only by `html` and `markup`. */
export class Html {
  constructor(readonly text: string) {}
}

/** What may stand between the parts of a template: texts are escaped, markup is not, lists are joined, nothing is left out. */
export type Part = Html | string | number | false | undefined | readonly Part[];

/** Escapes what has a meaning in markup or in a value of an attribute. */
export function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;").replaceAll("'", "&#39;");
}

function written(part: Part): string {
  if (part === undefined || part === false) return "";
  if (part instanceof Html) return part.text;
  return typeof part === "object" ? part.map(written).join("") : escaped(String(part));
}

/** Writes markup; whatever is put in is escaped. */
export function html(texts: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return new Html(texts.map((text, index) => text + written(parts[index])).join(""));
}

/** Markup that another writer has made. */
export function markup(text: string): Html {
  return new Html(text);
}
