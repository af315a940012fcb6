// The form: problems at their fields, the answer announced once, the address that holds the inputs, keyboard, search, paper.
import path from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { coursedFace } from "../../src/joints/coursed-face.js";
import { folder, openSite, type Site } from "./site.js";

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const face = "handbook/joints/coursed-face.html";
const order = "handbook/film/coating-order.html";
const layout = "handbook/boards/board-layout.html";

describe("bad input", () => {
  it("is told at its field, which names its message and is marked", async () => {
    const { page, faults } = await site.open(face);
    await page.fill("#in-depth", "3/8");
    const message = page.locator("#in-depth-problem");
    await message.waitFor({ state: "visible" });
    expect(await message.textContent()).toContain('"3/8" has no unit');
    expect(await page.getAttribute("#in-depth", "aria-invalid")).toBe("true");
    expect(((await page.getAttribute("#in-depth", "aria-describedby")) ?? "").split(" ")).toContain("in-depth-problem");
    // The answer to what stood there before is gone.
    expect(await page.locator("#output .answers").count()).toBe(0);
    await page.fill("#in-depth", "3/8 in");
    await message.waitFor({ state: "hidden" });
    expect(await page.getAttribute("#in-depth", "aria-invalid")).toBeNull();
    expect(await page.locator("#output .answers").count()).toBe(1);
    expect(faults).toEqual([]);
    await page.close();
  });

  it("takes the reader to the first field of several when he asks for the answer", async () => {
    const { page } = await site.open(face);
    for (const name of ["unitLength", "depth"]) await page.fill(`#in-${name}`, "");
    await page.click("button[type=submit]");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("in-unitLength");
    expect(await page.locator(".problem:visible").allTextContents()).toEqual([expect.stringContaining("Is missing"), expect.stringContaining("Is missing")]);
    await page.close();
  });

  it("of a pair is told beside both, and marks both", async () => {
    const { page } = await site.open(order);
    const pair = page.locator("[data-pair]").first();
    const fields = pair.locator("input");
    for (const index of [0, 1]) await fields.nth(index).fill("10 %");
    await page.click("button[type=submit]");
    expect(await pair.locator(":scope > .problem").textContent()).toContain("exclude each other");
    expect(await pair.locator("[aria-invalid]").count()).toBe(2);
    await page.close();
  });

  it("in JSON is told by its path, and what is no JSON is told as that", async () => {
    const { page } = await site.open(layout);
    const text = await page.inputValue("#in-input");
    await page.fill("#in-input", text.replace('"8 in"', '"8 lb"').replace('"upright"', '"askew"'));
    await page.locator("#in-input-problem li").nth(1).waitFor();
    const messages = (await page.locator("#in-input-problem li").allTextContents()).join("\n");
    expect(messages).toMatch(/orientation/i);
    expect(messages).toMatch(/screws\.spacing/i);
    expect(await page.getAttribute("#in-input", "aria-invalid")).toBe("true");
    // Each leads to its line, by keyboard too, and marks what is at fault there.
    const lines = (await page.inputValue("#in-input")).split("\n");
    const lead = page.locator("#in-input-problem li", { hasText: /screws\.spacing/i }).getByRole("button");
    expect(await lead.textContent()).toBe(`Line ${String(lines.findIndex((line) => line.includes('"8 lb"')) + 1)}`);
    await lead.press("Enter");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("in-input");
    const marked = await page.$eval("#in-input", (field) => (field as HTMLTextAreaElement).value.slice((field as HTMLTextAreaElement).selectionStart, (field as HTMLTextAreaElement).selectionEnd));
    expect(marked).toBe('"spacing": "8 lb"');
    await page.fill("#in-input", "{");
    await page.locator("#in-input-problem li", { hasText: "no JSON" }).waitFor();
    await page.close();
  });
});

it("the answer to new inputs is the package's, and is announced once however many keys were struck", async () => {
  const { page } = await site.open(face);
  await page.waitForTimeout(1500);
  await page.evaluate(() => {
    const said = document.getElementById("said") as HTMLElement;
    new MutationObserver(() => (said.dataset.times = String(Number(said.dataset.times ?? "0") + 1))).observe(said, { childList: true, characterData: true, subtree: true });
  });
  await page.locator("#in-area").pressSequentially("", { delay: 40 });
  await page.fill("#in-area", "");
  await page.locator("#in-area").pressSequentially("1000 ft2", { delay: 60 });
  await page.waitForTimeout(1800);
  const { volume } = coursedFace({ area: "1000 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" });
  expect(await page.locator("#output .answers .asked dd").first().textContent()).toContain(volume.toNumber("ft3").toFixed(5));
  expect(await page.textContent("#said")).toContain(volume.toNumber("ft3").toFixed(5));
  expect(await page.getAttribute("#said", "data-times")).toBe("1");
  await page.close();
});

it("the address holds the inputs, so that another reader sees the same", async () => {
  const { page } = await site.open(face);
  await page.fill("#in-depth", "1 in");
  await page.selectOption("#reading", "si");
  await page.waitForFunction(() => location.hash.includes("depth=1"));
  const answer = await page.locator("#output .answers").textContent();
  const { page: other } = await site.open(`${face}${new URL(page.url()).hash}`);
  expect(await other.inputValue("#in-depth")).toBe("1 in");
  expect(await other.locator("#output .answers").textContent()).toBe(answer);
  await other.click("#again");
  expect(await other.inputValue("#in-depth")).toBe("3/4 in");
  await Promise.all([page.close(), other.close()]);
});

it("a page opened from a disk computes too", async () => {
  const { page, faults } = await site.open(pathToFileURL(path.join(folder, face)).href);
  await page.fill("#in-depth", "1 in");
  await page.waitForFunction(() => location.hash.includes("depth=1"));
  expect(await page.locator("#output .answers").count()).toBe(1);
  expect(faults).toEqual([]);
  await page.close();
});

it("the first stop of the keyboard leads past the head", async () => {
  const { page } = await site.open(face);
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => document.activeElement?.className)).toBe("skip");
  await page.keyboard.press("Enter");
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("main");
  await page.close();
});

it("search finds by what a page is about, and Escape closes it", async () => {
  const { page, faults } = await site.open("units.html");
  await page.fill("#search", "dew point");
  await page.locator("#found a").first().waitFor();
  expect(await page.locator("#found a").first().getAttribute("href")).toMatch(/dew-point/);
  expect(await page.textContent("#found-count")).toMatch(/pages? found/);
  await page.keyboard.press("Escape");
  expect(await page.isVisible("#found")).toBe(false);
  expect(faults).toEqual([]);
  await page.close();
});

describe("on paper", () => {
  it.each([face, order, "handbook/weather/dew-point.html"])("%s is one clean sheet", async (place) => {
    const { page } = await site.open(place);
    const pdf = (await page.pdf({ format: "Letter" })).toString("latin1");
    expect(pdf.startsWith("%PDF")).toBe(true);
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await page.emulateMedia({ media: "print" });
    expect(await page.isVisible("form#inputs")).toBe(false);
    expect(await page.isVisible(".head")).toBe(false);
    expect(await page.isVisible("#output .answers")).toBe(true);
    await page.close();
  });

  it("a sheet has the address of its inputs, where that can be typed in again; a whole job's would fill the paper", async () => {
    const addressOnPaper = async (place: string): Promise<readonly [boolean, string]> => {
      const { page } = await site.open(place);
      await page.waitForSelector("#print:enabled");
      await page.emulateMedia({ media: "print" });
      const found = [await page.isVisible("#link"), await page.evaluate(() => getComputedStyle(document.getElementById("link") as HTMLElement, "::after").content)] as const;
      await page.close();
      return found;
    };
    const [isThere, address] = await addressOnPaper(face);
    expect(isThere).toBe(true);
    expect(address).toContain("#?area=");
    expect((await addressOnPaper("handbook/takeoff/take-off.html"))[0]).toBe(false);
  });
});
