// What the bench of roots and logarithms needs of the sources, as one bundle.
export { catalogue } from "../../src/catalogue.js";
export { exactArithmetic, toDecimal } from "../../src/core/amount.js";
export { evaluate } from "../../src/core/program.js";
export { parseFormula } from "../../src/core/formula.js";
export { amountOf } from "../../src/core/quantity.js";
