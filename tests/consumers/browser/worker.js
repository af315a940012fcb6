// Works a whole job out beside the page, and says what it broke of the page's policy, if anything.
import { takeOff } from "settingbed/takeoff";
import job from "./job.json";

const violations = [];
addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) => violations.push(`${violatedDirective} ${blockedURI}`));

const tried = takeOff.try(job);
// What the policy was asked to let through is told a moment later.
setTimeout(() => {
  const told = tried.ok ? `${tried.solution.answers.lines.length} lines` : tried.problems.map(({ message }) => message).join("; ");
  postMessage([told, ...violations].join("; "));
}, 200);
