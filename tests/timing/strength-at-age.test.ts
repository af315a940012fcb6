import { expect, it } from "vitest";
import { strengthAtAge } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";

const curve = { ultimate: "5000 psi", rateConstant: "0.25 /d", delay: "12 h" } as const;

it("goes either way: half the strength at 4.5 days", () => {
  // k (t - t0) = 0.25 x 4 = 1, so one half
  expect(strengthAtAge({ ...curve, age: "4.5 d" }).strength.toString()).toBe("2500 psi");
  expect(strengthAtAge({ ...curve, strength: "2500 psi" }).age.to("d").toString()).toBe("4.5");
});

it("asks for one of age and strength", () => {
  expect(faults(strengthAtAge.try(curve))).toEqual(["either reached"]);
  expect(faults(strengthAtAge.try({ ...curve, age: "1 d", strength: "100 psi" }))).toEqual(["either reached"]);
});
