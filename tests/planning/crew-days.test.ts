import { describe, expect, it } from "vitest";
import { crewDays, crewDuration, toolTime, usualAvailability, usualRates } from "../../src/planning/index.js";
import { ratesFromMemory } from "../../src/data/planning.js";
import { quantity } from "../../src/core/index.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

const day = { workday: "10 h", lunch: "1 h", travel: "0.5 h", breaks: "0.5 h", paid: "9 h" } as const;
const setting = { name: "setting", rate: { of: "area", amount: "2400 ft2", per: "100 ft2", hours: "22 h", factor: 1 } } as const;

describe("toolTime", () => {
  it("a man-day equivalent of 0.9375, as in NAVEDTRA 14045", () => {
    const { inputs, expected } = vector("navy-me");
    const { equivalent } = toolTime({ workday: inputs.workday as "10 h", lunch: inputs.lunch as "1 h", travel: inputs.travel as "1 h", breaks: inputs.breaks as "0.5 h", paid: "10 h" });
    expectPrinted(equivalent.to(), expected.ME);
  });

  it("the share of paid time by hand: 7.5 h of 10 h is 75 %", () => {
    expect(toolTime({ workday: "10 h", lunch: "1 h", travel: "1 h", breaks: "0.5 h", paid: "10 h" }).efficiency.toString()).toBe("75 %");
  });

  it("refuses a day that is all breaks, and less paid than worked", () => {
    expect(faults(toolTime.try({ ...day, workday: "2 h" }))).toEqual(["tooLow atTool"]);
    expect(faults(toolTime.try({ ...day, paid: "7.9 h" }))).toEqual(["tooLow notAtTool"]);
    expect(faults(toolTime.try({ ...day, workday: "25 h", lunch: "-1 h" }))).toEqual(["tooHigh workday", "tooLow lunch"]);
  });
});

describe("crewDuration", () => {
  it("8.3 and so 9 days, as in NAVEDTRA 14045", () => {
    const { inputs, expected } = vector("navy-duration");
    // 70 man-days of 8 h are 560 h
    const found = crewDuration({ labour: "560 h", crew: inputs.crew as never, availability: inputs.availability as never, equivalent: inputs.ME as never });
    expect(found.personDays.toString()).toBe(inputs["man-days"]);
    expectPrinted(found.exactDays.to(), expected.exact);
    expect(found.days.toString()).toBe(expected.days);
  });

  it("rounds up once, and not where it comes out whole", () => {
    const days = (labour: `${number} h`): string => crewDuration({ labour, crew: 3, availability: "70 %", equivalent: 1 }).days.toString();
    // 3 x 0.7 x 8 = 16.8 h a day; 168 h are 10 days
    expect([days("168 h"), days("168.01 h"), days("167.99 h")]).toEqual(["10", "11", "10"]);
  });
});

describe("crewDays", () => {
  it("by hand: 2,400 ft2 at 22 h for 100 ft2 are 66 person-days; 66 / 5 / 0.80 / 1 = 16.5, so 17 days", () => {
    const found = crewDays({ tasks: [setting], day, crew: 5, availability: "80 %" });
    expect([found.labour, found.personDays, found.atTool, found.equivalent, found.exactDays, found.days].map(String)).toEqual(["528 h", "66", "8 h", "1", "16.5", "17"]);
  });

  it("66 man-days for 16,000 ft2 of board, as in NAVEDTRA 14045", () => {
    const { inputs, expected } = vector("navy-man-days-board");
    expect(inputs.hours).toBe("33 man-hours per 1000 ft2");
    const found = crewDays({ tasks: [{ name: "board", rate: { of: "area", amount: inputs.area ?? "", per: "1000 ft2", hours: "33 h" } }], day, crew: 1, availability: 1 });
    expect(found.personDays.toString()).toBe(expected["man-days"]);
  });

  it("man-days from daily production, as in a masonry magazine of 1995; 27.78 is printed 27.7", () => {
    const { inputs, expected } = vector("masonry-mandays");
    expect(inputs).toMatchObject({ brick: "60,000 at 600/d", block: "5,000 at 180/d", grout: "1,000 ft3 at 200/d", anchors: "120 at 400/d" });
    const of = (rate: object): string => crewDays({ tasks: [{ name: "it", rate: rate as never }], day, crew: 1, availability: 1 }).personDays.to().toFixed(2);
    const pieces = (amount: number, per: number): string => of({ of: "count", amount, per, hours: "8 h" });
    expect([pieces(60_000, 600), pieces(5000, 180), of({ of: "volume", amount: "1000 ft3", per: "200 ft3", hours: "8 h" }), pieces(120, 400)]).toEqual(["100.00", "27.78", "5.00", "0.30"]);
    expect(expected["man-days"]).toBe("100; 27.7; 5; 0.3");
  });

  it("hours by task: 803 ft2 at 6 and 8 h for 100 ft2, as in a textbook, which rounds to whole hours", () => {
    const { inputs, expected } = vector("textbook-cmu-labour");
    expect([inputs.area, inputs.mason, inputs.labourer]).toEqual(["8.03 hundred ft2", "6 h/100 ft2", "8 h/100 ft2"]);
    const task = (name: string, hours: string): never => ({ name, rate: { of: "area", amount: "803 ft2", per: "100 ft2", hours, factor: 1 } }) as never;
    const { tasks } = crewDays({ tasks: [task("mason", "6 h"), task("labourer", "8 h")], day, crew: 1, availability: 1 });
    expectPrinted(tasks[0]?.labour.to("h") ?? 0, expected.mason);
    expectPrinted(tasks[1]?.labour.to("h") ?? 0, expected.labourer);
  });

  it("board above 10 ft takes 1.4 times as long, by a trade association's rule", () => {
    // 35 c against 25 c
    const { inputs, expected } = vector("board-height-premium");
    expect([inputs.base, expected.above]).toEqual(["25 c/ft2 to 10 ft", "35 c/ft2"]);
    const of = (factor: number): number => crewDays({ tasks: [{ ...setting, rate: { ...setting.rate, factor } }], day, crew: 1, availability: 1 }).labour.toNumber("h");
    expect(of(35 / 25) / of(1)).toBeCloseTo(1.4, 9);
  });

  it("ashlar facing, 80 ft2 a day for three, and rubble, 1/3 and 1/4 of a day for 25 ft3, as in a course of about 1905", () => {
    const { inputs } = vector("ashlar-labour");
    expect([inputs.output, inputs.crew]).toEqual(["80 ft2/day", "2 masons + 1 labourer"]);
    const labour = (rate: object): string => crewDays({ tasks: [{ name: "it", rate: rate as never }], day, crew: 1, availability: 1 }).labour.to("h").toString();
    // three persons of a 10-h day are 30 h for 80 ft2: 37.5 h for 100; at 8 h a day 24 h: 30 h for 100
    expect([labour({ of: "area", amount: "100 ft2", per: "80 ft2", hours: "30 h", factor: 1 }), labour({ of: "area", amount: "100 ft2", per: "80 ft2", hours: "24 h", factor: 1 })]).toEqual(["37.5", "30"]);
    expect(vector("rubble-labour").expected).toEqual({ mason: "1/3 day", helper: "1/4 day" });
    // 7/12 of a day of 12 h are 7 h for 25 ft3; 100 ft3 are 28 h
    expect(labour({ of: "volume", amount: "100 ft3", per: "25 ft3", hours: "7 h", factor: 1 })).toBe("28");
  });

  it("adds tasks before it rounds, each by its own rate", () => {
    // 10 h and 36 h and 2.4 h are 48.4 h, 6.05 person-days; two of four persons: 3.025 days
    const found = crewDays({
      tasks: [
        { name: "board", rate: { of: "area", amount: "500 ft2", per: "1000 ft2", hours: "20 h" } },
        { name: "corners", rate: { of: "length", amount: "120 ft", per: "1 ft", hours: "0.3 h" } },
        { name: "tape", rate: { of: "length", amount: "300 ft", per: "1000 ft", hours: "8 h" } },
      ],
      day, crew: 4, availability: "50 %",
    });
    expect([found.labour, found.exactDays, found.days].map(String)).toEqual(["48.4 h", "3.025", "4"]);
  });

  it("says that no factor was given, and asks for rates of one's own", () => {
    const { of, amount, per, hours } = setting.rate;
    const rate = { of, amount, per, hours };
    const assumed = (task: object): boolean => crewDays.solve({ tasks: [task as never], day, crew: 5, availability: "80 %" }).assumptions.includes("work without a factor takes as long as its rate says");
    expect([assumed({ name: "setting", rate }), assumed(setting)]).toEqual([true, false]);
    expect(crewDays.solve({ tasks: [setting], day, crew: 5, availability: "80 %" }).cautions.join(" ")).toContain("your own records");
  });

  it("refuses all that is wrong in one go", () => {
    const tried = crewDays.try({ tasks: [{ name: "setting", rate: { of: "area", amount: "0 ft2", per: "100 ft", hours: "22" } }], day, crew: 0, availability: "101 %" });
    expect(faults(tried)).toEqual(["tooLow tasks.0.rate.amount", "wrongDimension tasks.0.rate.per", "noUnit tasks.0.rate.hours", "tooLow crew", "tooHigh availability"]);
    expect(faults(crewDays.try({ tasks: [], day, crew: 1, availability: 1 }))).toEqual(["refused tasks"]);
    expect(faults(crewDays.try({ tasks: [setting], day: { ...day, lunch: "9.5 h" }, crew: 1, availability: 1 }))).toEqual(["tooLow day.atTool"]);
  });
});

describe("what is offered and never assumed", () => {
  it("availability of 0.75 to 0.85, as in NAVEDTRA 14233", () => {
    const { expected } = vector("navy-af-range");
    expect([quantity("ratio", usualAvailability.least), quantity("ratio", usualAvailability.most)].map((share) => share.to("ratio").toString())).toEqual([expected["main body"], expected.detail]);
  });

  it("rates are ranges, marked as from memory", () => {
    expect(ratesFromMemory.kind).toBe("from memory");
    for (const { least, most } of Object.values(usualRates)) expect(quantity("time", least).toNumber("h")).toBeLessThan(quantity("time", most).toNumber("h"));
  });
});
