// The exercise on a page: what it asks is worked out here by hand, in plain numbers read off its words.
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Opened, openSite, type Site } from "./site.js";

let site: Site;
let opened: Opened;
beforeAll(async () => {
  site = await openSite();
  opened = await site.open("handbook/film/coating-order.html", 1000);
  await opened.page.waitForSelector("#practice-answer:enabled");
  await opened.page.selectOption("#practice-units", "si");
});
afterAll(() => site.close());

const words = async (): Promise<string> => (await opened.page.textContent("#practice-problem")) ?? "";

/** A figure of the problem by its symbol. */
function figure(problem: string, symbol: string, unit: string): number {
  const [, number] = new RegExp(String.raw`${symbol} = ([\d.]+)${unit === "" ? "$" : ` ${unit}`}`, "m").exec(problem) ?? [];
  if (number === undefined) throw new Error(`${symbol} in ${unit} is not in: ${problem}`);
  return Number(number);
}

/** Packs before rounding: area, film and coats, with waste on top or over what is not lost, over a pack. */
function packs(problem: string, isAllowed = true): number {
  const litres = figure(problem, "A", "m2") * (figure(problem, "t_w", "um") / 1000) * figure(problem, "n", "");
  const allowed = problem.includes("waste, on top") ? 1 + figure(problem, "w", "%") / 100 : 1 / (1 - figure(problem, "s", "%") / 100);
  return (litres * (isAllowed ? allowed : 1)) / figure(problem, "V_p", "L");
}

async function draw(number: number): Promise<string> {
  await opened.page.fill("#practice-seed", String(number));
  await opened.page.press("#practice-seed", "Tab");
  return await words();
}

async function mark(answer: string): Promise<string> {
  await opened.page.fill("#practice-answer", answer);
  await opened.page.click("#practice-answering button[type=submit]");
  return (await opened.page.textContent("#practice-mark")) ?? "";
}

describe("the exercise of a page", () => {
  it("takes the right answer of ten numbers, and no other", async () => {
    const problems = new Set<string>();
    for (let number = 11; number <= 20; number += 1) {
      const problem = await draw(number);
      problems.add(problem);
      const right = Math.ceil(packs(problem) - 1e-9);
      expect(await mark(String(right))).toMatch(new RegExp(`^Right: ${String(right)}\\b`));
      expect(await mark(String(right + 1))).toMatch(/^Not right/);
    }
    expect(problems.size).toBeGreaterThan(8);
  });

  it("names the mistake that an answer comes of", async () => {
    for (let number = 1; number < 60; number += 1) {
      const problem = await draw(number);
      const [right, without] = [Math.ceil(packs(problem) - 1e-9), Math.ceil(packs(problem, false) - 1e-9)];
      if (right === without || !problem.includes("share of what is bought")) continue;
      expect(await mark(String(without))).toContain("loss left out");
      return;
    }
    throw new Error("no exercise in which the loss makes a pack more");
  });

  it("the same number gives the same exercise, the button the next, and what is no number is told", async () => {
    const seventh = await draw(7);
    await opened.page.click("#practice-next");
    expect(await opened.page.inputValue("#practice-seed")).toBe("8");
    expect(await words()).not.toBe(seventh);
    await opened.page.fill("#practice-seed", "7");
    await opened.page.press("#practice-seed", "Enter");
    expect(await opened.page.inputValue("#practice-seed")).toBe("7");
    expect(await words()).toBe(seventh);
    await opened.page.fill("#practice-seed", "seven");
    await opened.page.press("#practice-seed", "Tab");
    expect(await opened.page.textContent("#practice-mark")).toContain("such as 12");
    await opened.page.click("#practice-next");
    expect(await opened.page.inputValue("#practice-seed")).toBe("seven");
    expect(await words()).toBe(seventh);
    await draw(7);
    expect(await mark("a lot")).toMatch(/number/);
  });

  it("fits a phone, unfolded too", async () => {
    for (const place of ["film/coating-order", "joints/coursed-face", "fasteners/screw-shear-in-steel", "timing/concrete-strength-share"]) {
      const { page } = await site.open(`handbook/${place}.html`, 360);
      const practice = page.locator("#practice-key summary");
      if ((await practice.count()) === 0) throw new Error(`${place} has no exercise`);
      await practice.click();
      expect([place, await page.evaluate(() => document.documentElement.scrollWidth)]).toEqual([place, 360]);
      await page.close();
    }
  });

  it("the answer is folded away, and is not on the blank sheet that is printed", async () => {
    const { page, faults } = opened;
    const problem = await draw(7);
    expect(await page.isVisible("#practice-worked")).toBe(false);
    await page.emulateMedia({ media: "print" });
    await page.evaluate(() => {
      window.print = () => {
        document.body.dataset.printed = document.body.innerText;
        dispatchEvent(new Event("afterprint"));
      };
      document.getElementById("practice-print")?.click();
    });
    const printed = (await page.evaluate(() => document.body.dataset.printed)) ?? "";
    expect(await page.isVisible("#practice-blank")).toBe(false);
    await page.emulateMedia({ media: null });
    expect(printed).toContain("exercise 7, values 2, SI units");
    expect(printed).toContain(String(figure(problem, "A", "m2")));
    expect(printed).toContain("________");
    expect(printed).not.toContain("Usual mistakes");
    expect(printed).not.toContain("In code");
    expect(faults).toEqual([]);
  });
});
