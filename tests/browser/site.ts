// The site as built, served from this machine, and a browser to look at it.
import { readdirSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { chromium, type Page } from "playwright-core";

/** The folder that the site was built into. */
export const folder = process.env.SITE ?? "";

/** Every page, from the top of the site; the API has its own makers. */
export const pages: readonly string[] = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll(path.sep, "/"))
  .filter((file) => file.endsWith(".html") && !file.startsWith("api/"))
  .sort();

const types: Readonly<Record<string, string>> = { ".html": "text/html", ".css": "text/css", ".js": "text/javascript", ".svg": "image/svg+xml" };

/** A page that is open, with what went wrong in it. */
export interface Opened {
  readonly page: Page;
  /** Errors and warnings of the console, errors of scripts, and requests that left this machine or failed. */
  readonly faults: string[];
}

export interface Site {
  readonly address: string;
  readonly open: (place: string, width?: number) => Promise<Opened>;
  /** Goes on to another page in the same window, which has forgotten what went wrong before. */
  readonly turn: (opened: Opened, place: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** Serves the site and starts a browser. */
export async function openSite(): Promise<Site> {
  const server = createServer(({ url = "/" }, response) => {
    const file = path.join(folder, decodeURIComponent(new URL(url, "http://site").pathname));
    try {
      const body = readFileSync(file);
      response.writeHead(200, { "content-type": types[path.extname(file)] ?? "application/octet-stream" }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => void server.listen(0, "127.0.0.1", resolve));
  const address = `http://127.0.0.1:${String((server.address() as AddressInfo).port)}/`;
  // Whoever is root in a container has no sandbox to give.
  const browser = await chromium.launch({ executablePath: process.env.CHROMIUM_PATH ?? "", args: process.getuid?.() === 0 ? ["--no-sandbox"] : [] });
  return {
    address,
    async open(place, width = 1200) {
      const page = await browser.newPage({ viewport: { width, height: 900 } });
      const faults: string[] = [];
      page.on("console", (message) => {
        if (message.type() === "error" || message.type() === "warning") faults.push(message.text());
      });
      page.on("pageerror", (error) => faults.push(error.message));
      page.on("request", (request) => {
        if (!request.url().startsWith(address) && !request.url().startsWith("file:")) faults.push(`asks for ${request.url()}`);
      });
      page.on("response", (response) => {
        if (!response.ok() && response.status() !== 304) faults.push(`${String(response.status())} ${response.url()}`);
      });
      await page.goto(place.startsWith("file:") ? place : address + place);
      return { page, faults };
    },
    async turn({ page, faults }, place) {
      faults.length = 0;
      await page.goto(address + place);
    },
    async close() {
      await browser.close();
      server.close();
    },
  };
}
