// Every page renders without a word in the console, fits a phone, and computes what the package computes.
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { catalogue } from "../../src/catalogue.js";
import { spaced } from "../../src/core/spaced.js";
import type { Definition } from "../../src/core/definition.js";
import { isQuantity, type Quantity } from "../../src/core/quantity.js";
import { quantity } from "../../src/core/read-quantity.js";
import { capital } from "../../docs/site/shared/words.js";
import { type Opened, openSite, pages, type Site } from "./site.js";

let site: Site;
let phone: Opened;
beforeAll(async () => {
  site = await openSite();
  phone = await site.open("index.html", 360);
});
afterAll(() => site.close());

const handbook = pages.filter((page) => /^handbook\/.+\//.test(page));

it("there is a page for everything in the catalogue", () => {
  expect(handbook).toHaveLength(catalogue.length);
  expect(catalogue.length).toBeGreaterThan(150);
});

/** Single answers by what they are called on a page. */
function answersOf(id: string, input: unknown): ReadonlyMap<string, Quantity> {
  const run = catalogue.find((one) => one.id === id);
  const tried = run?.try(input);
  if (tried?.ok !== true) throw new Error(`${id} does not answer`);
  const steps = (run as { readonly definition?: Definition }).definition?.steps;
  const entries = Object.entries(tried.solution.answers as Readonly<Record<string, unknown>>);
  return new Map(entries.flatMap(([name, value]) => (isQuantity(value) ? [[capital(steps?.[name]?.says ?? spaced(name)), value] as const] : [])));
}

/** A figure as a page prints it, read again. */
function readBack(text: string, like: Quantity): Quantity {
  return quantity(like.dimension, text.replace(/^≈\s*|\s*\(governed by .*\)$/g, "").replaceAll("\u00a0", " ").replaceAll("⋅", " ") as never);
}

describe("a page of the handbook", () => {
  it.each(handbook)("%s", async (place) => {
    const { page, faults } = phone;
    await site.turn(phone, place);
    const panel = page.locator("#panel");
    const [id, example] = [await panel.getAttribute("data-id"), await panel.getAttribute("data-example")];
    // What was written when the site was built is taken away, so that what is read is what the page has worked out.
    await page.evaluate(() => document.getElementById("output")?.replaceChildren());
    await page.selectOption("#reading", "si");
    await page.waitForSelector("#output > *");
    const shown = new Map(await page.$$eval("#output .answers > div", (rows) => rows.map((row) => [row.querySelector("dt")?.textContent ?? "", row.querySelector("dd")?.textContent ?? ""] as const)));
    const answers = answersOf(id ?? "", JSON.parse(example ?? ""));
    for (const [name, answer] of answers) {
      const read = readBack(shown.get(name) ?? "", answer);
      const [found, wanted] = [read.toNumber(read.unit), answer.toNumber(read.unit)];
      expect(Math.abs(found - wanted), `${name}: ${String(shown.get(name))} against ${answer.toString()}`).toBeLessThanOrEqual(1e-5 * Math.abs(wanted) + 1e-12);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(faults).toEqual([]);
  });
});

describe("any other page", () => {
  it.each(pages.filter((page) => !handbook.includes(page)))("%s", async (place) => {
    const { page, faults } = phone;
    await site.turn(phone, place);
    expect(await page.title()).toContain("settingbed");
    expect(await page.locator("h1").count()).toBe(1);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(faults).toEqual([]);
  });
});

it("every link leads to a page, and every place in a page is there", async () => {
  const { page } = phone;
  const dead: string[] = [];
  const ids = new Map<string, readonly string[]>();
  const links: { readonly from: string; readonly to: string }[] = [];
  for (const place of pages) {
    const text = await (await page.request.get(site.address + place)).text();
    ids.set(place, [...text.matchAll(/\sid="([^"]+)"/g)].map(([, one = ""]) => one));
    links.push(...[...text.matchAll(/<a [^>]*href="([^"]+)"/g)].map(([, to = ""]) => ({ from: place, to })));
  }
  for (const { from, to } of links) {
    const { origin, pathname, hash } = new URL(to, site.address + from);
    const place = pathname.slice(1);
    if (`${origin}/` !== site.address || place.startsWith("api/") || to.startsWith("#?")) continue;
    const found = ids.get(place);
    if (found === undefined || (hash !== "" && !found.includes(hash.slice(1)))) dead.push(`${from}: ${to}`);
  }
  expect(dead).toEqual([]);
  expect(links.length).toBeGreaterThan(1000);
});
