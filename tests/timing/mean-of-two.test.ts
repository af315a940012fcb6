import { expect, it } from "vitest";
import { meanOfTwo } from "../../src/timing/index.js";

it("lies halfway, on either scale and in either order", () => {
  expect(meanOfTwo({ one: "27 degF", other: "43 degF" }).mean.toString()).toBe("35 degF");
  expect(meanOfTwo({ one: "43 degF", other: "27 degF" }).mean.toString()).toBe("35 degF");
  // 0 degC and 50 degF (10 degC): 5 degC
  expect(meanOfTwo({ one: "0 degC", other: "50 degF" }).mean.to("degC").toString()).toBe("5");
});
