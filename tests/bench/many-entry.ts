// What the benches of many rows and of the three jobs need of the sources, as one bundle.
export { quantity } from "../../src/core/index.js";
export { solveMany, solveRows } from "../../src/many/index.js";
export { columnsOf, manyJobs } from "../support/many-jobs.js";
export { drawFrom } from "../support/random.js";
