import type { Basis } from "../core/basis.js";

/** The cover over the top of a wall at the end of the day. */
export const topCover = {
  kind: "published",
  publisher: "mason contractors' association",
  title: "text of TMS 602 explained, hot weather",
  edition: "edition not named",
  locator: "items 1-3",
  says: "the cover over the top laps at least 2 ft down each side",
} as const satisfies Basis;

/** What the mean of a day is. */
export const meanDaily = {
  kind: "published",
  publisher: "NCMA (CMHA)",
  title: "TEK 03-01C, All-weather concrete masonry construction",
  edition: "edition not named",
  locator: "cold weather",
  says: "for masonry without grout the mean of the first 24 h, of 24 readings; the mason contractors take the mean of low and high",
} as const satisfies Basis;

/** How completed masonry is covered, by the mean of the day that follows; each band from its lower end up to, not with, its upper end. */
export const coverRules = {
  "MSJC 1999": {
    basis: {
      kind: "published", publisher: "MSJC", title: "ACI 530.1-99/ASCE 6-99/TMS 602-99", edition: "1999", locator: "cold weather protection",
      quotedBy: "Masonry Construction magazine, Effects of torching",
    },
    bands: [
      { from: "25 degF", below: "40 degF", method: "cover with a weather-resistive membrane", lasts: "24 h" },
      { from: "20 degF", below: "25 degF", method: "cover with insulating blankets", lasts: "24 h" },
    ],
  },
  "BIA Technical Note 1": {
    basis: {
      kind: "published", publisher: "Brick Industry Association", title: "Technical Note 1", edition: "edition not named", locator: "cold weather protection",
      quotedBy: "Masonry Construction magazine, Effects of torching",
    },
    bands: [
      { from: "25 degF", below: "40 degF", method: "cover with a weather-resistive membrane", lasts: "48 h" },
      { from: "20 degF", below: "25 degF", method: "cover with insulating blankets", lasts: "48 h" },
    ],
  },
  "Beall 2004": {
    basis: { kind: "published", publisher: "McGraw-Hill", title: "C. Beall, Masonry and Concrete", edition: "2004", locator: "Figure 5-33, page 176" },
    bands: [
      { from: "25 degF", below: "32 degF", method: "keep the masonry above 32 degF", lasts: "16 h" },
      { from: "20 degF", below: "25 degF", method: "keep the masonry above 32 degF", lasts: "24 h" },
    ],
  },
} as const satisfies Record<string, { readonly basis: Basis; readonly bands: readonly { readonly from: string; readonly below: string; readonly method: string; readonly lasts: string }[] }>;
