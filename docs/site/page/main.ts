// What runs in every page: the panel and the exercise where there are any, the search, and scrolling by keyboard where a part is too wide.
import { openPanel } from "./panel.js";
import { openPractice } from "./practice.js";
import { openSearch } from "./search.js";
import { reachWideParts } from "./wide-parts.js";

openSearch();
const panel = document.getElementById("panel");
if (panel !== null) openPanel(panel);
const practice = document.getElementById("practice");
if (practice !== null) openPractice(practice, panel?.dataset.id);
reachWideParts();
