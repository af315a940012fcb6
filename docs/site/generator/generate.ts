import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { styleSheet } from "../../../src/render/index.js";
import { several } from "../shared/words.js";
import { coveragePage } from "./coverage-page.js";
import { glossaryPage } from "./glossary-page.js";
import { guideIndex, guidePages } from "./guide-pages.js";
import { handbookIndex } from "./handbook-index.js";
import { handbookPage } from "./handbook-page.js";
import { homePage } from "./home-page.js";
import { allListed } from "./listed.js";
import { searchIndex } from "./search-index.js";
import { document } from "./shell.js";
import { sourcesPage } from "./sources-page.js";
import { unitsPage } from "./units-page.js";

/** Writes all pages and the search index into a folder, and says how many. */
export async function generate(out: string): Promise<string> {
  const listed = await allListed();
  const byId = new Map(listed.map((one) => [one.id, one]));
  const guides = guidePages();
  const lists = [handbookIndex(listed), guideIndex(guides), coveragePage(listed), unitsPage(), sourcesPage(listed), glossaryPage(listed)];
  const pages = [homePage(listed, guides), ...lists, ...guides, ...listed.map((one) => handbookPage(one, byId))];
  for (const page of pages) {
    const file = path.join(out, page.page);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, document(page));
  }
  writeFileSync(path.join(out, "search-index.js"), searchIndex(listed, guides, lists));
  writeFileSync(path.join(out, "worked.css"), styleSheet);
  copyFileSync(path.resolve(import.meta.dirname, "../mark.svg"), path.join(out, "mark.svg"));
  return `${several(pages.length, "page")} of handbook and guides`;
}
