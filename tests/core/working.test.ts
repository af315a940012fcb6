// How a step is shown with numbers, worked by hand: what is put in, what is converted and by which factor, what comes out.
import { describe, expect, it } from "vitest";
import { calculation } from "../../src/core/calculation.js";
import { type Figure, figuresText, type Working, workings } from "../../src/core/working.js";

const basis = { kind: "derived", says: "geometry" } as const;
const length = (symbol: string) => ({ is: "length", unit: ["in", "mm"], symbol, says: "length" }) as const;

const figure = ({ number, unit }: Figure): string => `${number} ${unit}`.trim();
const told = ({ conversions, result, shown }: Working): readonly string[] => [
  ...conversions.map(({ name, from, operator, factor, to }) => `${name ?? ""}: ${figure(from)} ${operator} ${figure(factor)} = ${figure(to)}`),
  figure(result),
  ...(shown === undefined ? [] : [`${figure(shown.from)} ${shown.operator} ${figure(shown.factor)} = ${figure(shown.to)}`]),
];

describe("workings", () => {
  it("bring inches to feet beside square feet, and cubic feet to gallons at the end", () => {
    const fill = calculation({
      id: "demo.fill", title: "A fill",
      given: { area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area" }, depth: length("d") },
      steps: { volume: { is: "volume", unit: ["gal", "L"], symbol: "V", formula: "area * depth", basis } },
    });
    // 10 in / 12 in/ft = 0.83333333 ft; 6 ft2 x 10/12 = 5 ft3; a gallon is 231 in3, so 1728/231 = 7.4805195 gal/ft3.
    const [one] = workings(fill.solve({ area: "6 ft2", depth: "10 in" }));
    expect(told(one!)).toEqual(["depth: 10 in / 12 in/ft = 0.83333333 ft", "5 ft3", "5 ft3 * 7.48052 gal/ft3 = 37.4026 gal"]);
    expect(figuresText(one!)).toBe("6 ft2 * 0.83333333 ft");
    const [two] = workings(fill.solve({ area: "6 ft2", depth: "10 in" }), { digits: 4 });
    expect(told(two!)).toEqual(["depth: 10 in / 12 in/ft = 0.833333 ft", "5 ft3", "5 ft3 * 7.481 gal/ft3 = 37.4 gal"]);
  });

  it("see a clash behind a unit that has none, and take feet where something is sold by volume", () => {
    const load = calculation({
      id: "demo.load", title: "A load",
      given: { area: { is: "area", unit: "ft2", symbol: "A", says: "area" }, density: { is: "density", unit: "lb/ft3", symbol: "r", says: "density" }, depth: length("d") },
      steps: { mass: { is: "mass", unit: "lb", symbol: "m", formula: "area * density * depth", basis } },
    });
    // Half a foot of 120 lb/ft3 on 2 ft2.
    expect(told(workings(load.solve({ area: "2 ft2", density: "120 lb/ft3", depth: "6 in" }))[0]!)).toEqual(["depth: 6 in / 12 in/ft = 0.5 ft", "120 lb"]);
    const level = calculation({
      id: "demo.level", title: "A level",
      given: { volume: { is: "volume", unit: ["gal", "L"], symbol: "V", says: "volume" }, width: length("w") },
      steps: { height: { is: "length", unit: ["in", "mm"], symbol: "h", formula: "volume / (width * width)", basis } },
    });
    // 231 in3 on a square of 12 in: 231/1728 = 0.13368056 ft3 on 1 ft2, 1.60417 in.
    expect(told(workings(level.solve({ volume: "1 gal", width: "12 in" }))[0]!)).toEqual([
      "volume: 1 gal / 7.4805195 gal/ft3 = 0.13368056 ft3", "width: 12 in / 12 in/ft = 1 ft", "0.133681 ft", "0.133681 ft * 12 in/ft = 1.60417 in",
    ]);
  });

  it("leave a film in mils, where nothing else is measured", () => {
    const film = calculation({
      id: "demo.film", title: "A film",
      given: { coat: { is: "length", unit: ["mil", "um"], symbol: "t", says: "coat" }, coats: { is: "count", symbol: "n", says: "coats" } },
      steps: { all: { is: "length", unit: ["mil", "um"], symbol: "T", formula: "coat * coats", basis } },
    });
    const [one] = workings(film.solve({ coat: "18 mil", coats: 2 }));
    expect(told(one!)).toEqual(["36 mil"]);
    expect("shown" in one!).toBe(false);
  });

  it("give a share as the number that comes out, then as per cent; a share that is only handed on stays one", () => {
    const share = calculation({
      id: "demo.share", title: "A share",
      given: { part: length("p"), whole: length("w"), told: { is: "ratio", unit: "%", symbol: "f", says: "share" } },
      steps: {
        share: { is: "ratio", unit: "%", symbol: "s", formula: "part / whole", basis },
        same: { is: "ratio", unit: "%", symbol: "q", formula: "told", basis },
      },
    });
    const [one, two] = workings(share.solve({ part: "3 in", whole: "12 in", told: "40 %" }));
    expect(told(one!)).toEqual(["0.25", "0.25 * 100 % = 25 %"]);
    expect(told(two!)).toEqual(["40 %"]);
  });

  it("keep degrees in a sine, take radians elsewhere, and come from radians to degrees", () => {
    const arc = calculation({
      id: "demo.arc", title: "An arc",
      given: { angle: { is: "angle", unit: "deg", symbol: "a", says: "angle" }, radius: length("r") },
      steps: {
        rise: { is: "length", unit: ["in", "mm"], symbol: "h", formula: "sin(angle) * radius", basis },
        arc: { is: "length", unit: ["in", "mm"], symbol: "l", formula: "angle * radius", basis },
        back: { is: "angle", unit: "deg", symbol: "b", formula: "asin(rise / radius)", basis },
      },
    });
    // pi/6 = 0.52359878; 180/pi = 57.295780.
    const [rise, along, back] = workings(arc.solve({ angle: "30 deg", radius: "10 in" }));
    expect(told(rise!)).toEqual(["5 in"]);
    expect(figuresText(rise!)).toBe("sin(30 deg) * 10 in");
    expect(told(along!)).toEqual(["angle: 30 deg / 57.29578 deg = 0.52359878 rad", "5.23599 in"]);
    expect(told(back!)).toEqual(["0.523599 rad", "0.523599 rad * 57.2958 deg = 30 deg"]);
  });

  it("keep degrees only where an angle is all that a sine is taken of", () => {
    const turned = (formula: string, is: "ratio" | "length" | "angle" = "length"): readonly string[] => {
      const one = calculation({
        id: "demo.turned", title: "Turned",
        given: { angle: { is: "angle", unit: "deg", symbol: "a", says: "angle" }, other: { is: "angle", unit: "deg", symbol: "b", says: "other angle" }, radius: length("r") },
        steps: { out: { is, unit: is === "length" ? "in" : is === "angle" ? "deg" : "ratio", symbol: "o", formula, basis } as never },
      });
      const [worked] = workings(one.solve({ angle: "30 deg", other: "90 deg", radius: "10 in" } as never));
      return [...worked!.operands].filter(([name]) => name !== "radius").map(([name, { number, unit }]) => `${name} ${number} ${unit}`);
    };
    // 30 degrees are pi/6 = 0.52359878, 90 degrees pi/2 = 1.5707963 radians.
    for (const formula of ["2 * sin(angle) * radius", "radius - sin(angle) * pi * radius"]) expect(turned(formula), formula).toEqual(["angle 30 deg"]);
    for (const formula of ["sin(-angle) * radius", "-angle * radius", "angle ^ 2 * radius", "(angle - sin(angle)) * radius"]) expect(turned(formula), formula).toEqual(["angle 0.52359878 rad"]);
    for (const formula of ["min(angle, other) * radius", "sin(angle + other) * radius"]) expect(turned(formula), formula).toEqual(["angle 0.52359878 rad", "other 1.5707963 rad"]);
    expect(turned("sin(angle) * radius * other")).toEqual(["angle 30 deg", "other 1.5707963 rad"]);
  });

  it("put a figure with its unit in brackets where it is raised, and one below nought", () => {
    const square = calculation({
      id: "demo.square", title: "A square",
      given: { side: length("a"), off: length("o"), share: { is: "ratio", symbol: "f", says: "share" } },
      steps: { area: { is: "area", unit: ["in2", "mm2"], symbol: "A", formula: "side ^ 2 + side * off", basis }, power: { is: "ratio", symbol: "p", formula: "share ^ 2", basis } },
    });
    const [area, power] = workings(square.solve({ side: "3 in", off: "-1 in", share: 0.5 }));
    expect(figuresText(area!)).toBe("(3 in) ^ 2 + 3 in * (-1 in)");
    expect(figuresText(power!)).toBe("0.5 ^ 2");
  });

  it("take a stress apart into force and length, and a density by the yard of what it is multiplied with", () => {
    const pull = calculation({
      id: "demo.pull", title: "A pull",
      given: { stress: { is: "pressure", unit: ["ksi", "MPa"], symbol: "F", says: "stress" }, area: { is: "area", unit: ["in2", "mm2"], symbol: "A", says: "area" } },
      steps: { force: { is: "force", unit: ["lbf", "N"], symbol: "P", formula: "stress * area", basis } },
    });
    expect(told(workings(pull.solve({ stress: "33 ksi", area: "0.1 in2" }))[0]!)).toEqual(["stress: 33 ksi * 1000 lbf/in2/ksi = 33000 lbf/in2", "3300 lbf"]);
    expect(told(workings(pull.solve({ stress: "250 MPa", area: "10 mm2" }))[0]!).at(-1)).toBe("2500 N");
    const fill = calculation({
      id: "demo.weight", title: "A weight",
      given: { density: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "r", says: "density" }, volume: { is: "volume", unit: ["gal", "L"], symbol: "V", says: "volume" } },
      steps: { mass: { is: "mass", unit: ["lb", "kg"], symbol: "m", formula: "density * volume", basis } },
    });
    // A gallon is 231/1728 ft3: 120 x 0.13368056 = 16.0417 lb. Ten litres are a hundredth of a cubic metre.
    expect(told(workings(fill.solve({ density: "120 lb/ft3", volume: "1 gal" }))[0]!)).toEqual(["volume: 1 gal / 7.4805195 gal/ft3 = 0.13368056 ft3", "16.0417 lb"]);
    expect(told(workings(fill.solve({ density: "2000 kg/m3", volume: "10 L" }))[0]!)).toEqual(["volume: 10 L / 1000 L/m3 = 0.01 m3", "20 kg"]);
  });

  it("keep the unit of what is the least, and its root", () => {
    const least = calculation({
      id: "demo.least", title: "The least",
      given: { one: length("a"), other: length("b"), face: { is: "area", unit: ["in2", "mm2"], symbol: "A", says: "face" } },
      steps: { least: { is: "length", unit: ["in", "mm"], symbol: "m", formula: "min(one, other)", basis }, side: { is: "length", unit: ["in", "mm"], symbol: "s", formula: "sqrt(face)", basis } },
    });
    const [min, side] = workings(least.solve({ one: "5 in", other: "7 in", face: "9 in2" }));
    expect([told(min!), told(side!)]).toEqual([["5 in"], ["3 in"]]);
    const sum = calculation({
      id: "demo.sum", title: "A sum",
      given: { one: length("a"), face: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "face" } },
      steps: { all: { is: "area", unit: ["ft2", "m2"], symbol: "s", formula: "one * one + face", basis } },
    });
    // 6 in are half a foot: a quarter of a square foot and one more.
    expect(told(workings(sum.solve({ one: "6 in", face: "1 ft2" }))[0]!)).toEqual(["one: 6 in / 12 in/ft = 0.5 ft", "1.25 ft2"]);
  });
});
