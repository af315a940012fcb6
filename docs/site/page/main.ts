// What runs in every page: the panel where there is one, the search, and scrolling by keyboard where a part is too wide.
import { openPanel } from "./panel.js";
import { openSearch } from "./search.js";
import { reachWideParts } from "./wide-parts.js";

openSearch();
const panel = document.getElementById("panel");
if (panel !== null) openPanel(panel);
reachWideParts();
