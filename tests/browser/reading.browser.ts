// Fit to be read with a screen reader, by keyboard and enlarged: axe-core finds nothing, nothing is cut off.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Opened, openSite, pages, type Site } from "./site.js";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

let site: Site;
let window: Opened;
beforeAll(async () => {
  site = await openSite();
  window = await site.open("index.html");
});
afterAll(() => site.close());

interface Found {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

/** What axe-core finds in a page as it stands. */
async function violations(page: Opened["page"], rules: object = {}): Promise<readonly string[]> {
  await page.evaluate(axe);
  const found = await page.evaluate(
    async (options) => (await (globalThis as unknown as { axe: { run: (options: object) => Promise<{ violations: Found[] }> } }).axe.run(options)).violations,
    { resultTypes: ["violations"], rules },
  );
  return found.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 200)} ${node.failureSummary ?? ""}`));
}

/** Of the handbook the first page of each topic, and those with fields of another kind; all others. */
const topics = new Set<string>();
const ofEachKind = pages.filter((page) => {
  const [, topic, file] = page.split("/");
  if (!page.startsWith("handbook/") || file === undefined || topic === undefined) return true;
  if (/(board-layout|coating-order|take-off|masonry-weather|coursed-face)\.html$/.test(page)) return true;
  return topics.has(topic) ? false : topics.add(topic);
});

/** Colours come from one style sheet and take half the time, so they are looked at on pages of each kind; all else on every page. */
const colours = (place: string): object => ({ "color-contrast": { enabled: ofEachKind.includes(place) } });

describe("axe-core finds nothing in", () => {
  it.each(pages)("%s", async (place) => {
    await site.turn(window, place);
    expect(await violations(window.page, colours(place))).toEqual([]);
  });

  it("a form with problems, on a phone, with everything unfolded", async () => {
    for (const place of ["handbook/joints/coursed-face.html", "handbook/film/coating-order.html", "handbook/boards/board-layout.html"]) {
      const { page } = await site.open(place, 360);
      await page.locator("#inputs input, #inputs textarea").first().fill("3/8");
      await page.click("button[type=submit]");
      await page.evaluate(() => {
        for (const one of document.querySelectorAll("details")) one.open = true;
        dispatchEvent(new Event("resize"));
      });
      expect(await violations(page)).toEqual([]);
      await page.close();
    }
  });
});

describe("enlarged to 200 %", () => {
  it.each(["index.html", "handbook/joints/coursed-face.html", "handbook/takeoff/take-off.html", "coverage.html", "glossary.html"])("%s needs no scrolling to the side", async (place) => {
    // A window of 1280 px at 200 % holds 640.
    const { page } = await site.open(place, 640);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(640);
    await page.close();
  });
});

it("a page says its language, and every formula says itself in text", async () => {
  const { page } = await site.open("handbook/weather/dew-point.html");
  expect(await page.getAttribute("html", "lang")).toBe("en");
  expect(await page.locator("math").count()).toBeGreaterThan(5);
  expect(await page.locator("math:not([alttext])").count()).toBe(0);
  expect(await page.locator(".formulas .words").count()).toBeGreaterThan(0);
  await page.close();
});

it("who asks for less motion gets none", async () => {
  const { page } = await site.open("index.html");
  await page.emulateMedia({ reducedMotion: "reduce" });
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).scrollBehavior)).toBe("auto");
  await page.close();
});
