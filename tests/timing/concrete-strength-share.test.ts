import { describe, expect, it } from "vitest";
import { concreteStrengthShare, strengthShare } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

const days = (text: string | undefined): `${number} d` => `${Number(/^(\d+) d/.exec(text ?? "")?.[1])} d`;

describe("share of the 28-day strength", () => {
  it.each(vectors("ec2-beta-cc-"))("of EN 1992-1-1, equations 3.2 and 3.4: $id", ({ inputs, expected }) => {
    const coefficient = Number(/^[\d.]+/.exec(inputs.s ?? "")?.[0]);
    expectPrinted(concreteStrengthShare({ age: days(inputs.t), coefficient }).strengthShare.to("ratio"), expected.beta_cc);
    const cementClass = /class ([RNS])/.exec(inputs.s ?? "")?.[1] as "N";
    expectPrinted(strengthShare({ age: days(inputs.t), cementClass }).strengthShare.to("ratio"), expected.beta_cc);
  });

  it("is not what is commonly taught: 40 % at 3 days against 60 %, and near it later", () => {
    const off = vectors("percent-strength-").map(({ inputs, expected }) => {
      const taught = Number(/^\d+/.exec(expected.percent ?? "")?.[0]);
      return strengthShare({ age: days(inputs.t), cementClass: "N" }).strengthShare.toNumber("%") - taught;
    });
    expect(vector("percent-strength-3d").expected.percent).toBe("40 %");
    expect(off.map(Math.round)).toEqual([20, 13, 0, 1]);
  });

  it("grows with age, faster for a faster cement", () => {
    const share = (age: `${number} d`, cementClass: "R" | "N" | "S"): number => strengthShare({ age, cementClass }).strengthShare.toNumber();
    expect(share("3 d", "R")).toBeGreaterThan(share("3 d", "N"));
    expect(share("3 d", "N")).toBeGreaterThan(share("3 d", "S"));
    expect(share("3 d", "N")).toBeLessThan(share("4 d", "N"));
  });

  it("is told from 1 to 28 days alone", () => {
    expect(faults(strengthShare.try({ age: "23 h", cementClass: "N" }))).toEqual(["tooLow age"]);
    expect(faults(strengthShare.try({ age: "29 d", cementClass: "N" }))).toEqual(["tooHigh age"]);
    expect(faults(strengthShare.try({ age: "28 d", cementClass: "X" }))).toEqual(["notAChoice cementClass"]);
  });
});
