import { sentence, wordsFrom } from "../core/refusals.js";

type Test = "shear" | "tension";

/** Words why the functions for limits refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("limits", {
  testedIn: ({ adhesionClass, test }: { adhesionClass: string; test: Test }) => sentence`leave it out: ${adhesionClass} is tested in ${test}`,
  asSpecified: () => "write one of shear, tension, as the specification says of its figure",
  figureIsIn: ({ test }: { test: Test }) => sentence`the figure is one in ${test}; shear and tension are not compared`,
  giveClearances: () => "give aboveEarth, abovePaving or aboveWalkingSurface, whichever there is",
});
