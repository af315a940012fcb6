import { entriesOf } from "../shared/inputs.js";
import { plainWords } from "../shared/words.js";
import type { Guide } from "./guide-pages.js";
import type { Listed } from "./listed.js";
import type { Page } from "./shell.js";

/** What can be found: title, page, kind, and further words in small letters. */
export type Findable = readonly [title: string, page: string, kind: string, words: string];

/** The index as a script, since the policy of the pages lets them fetch nothing. */
export function searchIndex(all: readonly Listed[], guides: readonly Guide[], others: readonly Page[]): string {
  const rows: readonly Findable[] = [
    ...all.map((listed): Findable => [listed.title, listed.page, plainWords(listed.topic), wordsOf(listed)]),
    ...guides.map(({ title, page, says, headings }): Findable => [title, page, "guide", `${says} ${headings.join(" ")}`]),
    ...others.map(({ title, page, says }): Findable => [title, page, "", says]),
  ];
  const plain = rows.map(([title, page, kind, words]) => [title, page, kind, [...new Set(words.toLowerCase().match(/[\p{L}\d]{2,}/gu))].join(" ")]);
  return `globalThis.settingbedIndex = ${JSON.stringify(plain)};\n`;
}

function wordsOf({ name, says, id, run, definition }: Listed): string {
  const rows = Object.entries({ ...entriesOf(run), ...definition?.constants, ...definition?.steps });
  return [name, plainWords(name), id, says, ...rows.flatMap(([key, row]) => [plainWords(key), row.says ?? ""])].join(" ");
}
