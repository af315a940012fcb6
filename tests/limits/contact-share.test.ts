import { expect, it } from "vitest";
import { contactShare } from "../../src/limits/contact-share.js";
import { faults } from "../support/faults.js";

it("contactShare is what the voids leave: by hand 1 - 7.1/288 = 97.5347 %", () => {
  expect(contactShare({ unitArea: "288 in2", voidArea: "7.1 in2" }).share.to("%").toFixed(4)).toBe("97.5347");
  expect(contactShare({ unitArea: "288 in2", voidArea: "0 in2" }).share.toString()).toBe("100 %");
  expect(contactShare({ unitArea: "288 in2", voidArea: "288 in2" }).share.toString()).toBe("0 %");
});

it("contactShare refuses voids larger than the unit", () => {
  expect(faults(contactShare.try({ unitArea: "288 in2", voidArea: "288.001 in2" }))).toEqual(["tooLow share"]);
  expect(faults(contactShare.try({ unitArea: "0 in2", voidArea: "-1 in2" }))).toEqual(["tooLow unitArea", "tooLow voidArea"]);
});
