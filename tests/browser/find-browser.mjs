import { existsSync } from "node:fs";

const places = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** The program of a Chromium that is installed, if there is one. @returns {string | undefined} */
export function findBrowser() {
  return [process.env.CHROMIUM_PATH ?? "", ...places].find((place) => place !== "" && existsSync(place));
}
