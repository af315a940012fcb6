let isWatched = false;

/** What is wider than its place can be scrolled by keyboard too; what is not takes no stop on the way. */
export function reachWideParts(): void {
  const set = (): void => {
    for (const part of document.querySelectorAll<HTMLElement>(".scroll, .worked .steps > li, .worked .way")) {
      if (part.scrollWidth > part.clientWidth) part.tabIndex = 0;
      else part.removeAttribute("tabindex");
    }
  };
  set();
  if (isWatched) return;
  isWatched = true;
  addEventListener("resize", set);
  // What is folded has no width until it is unfolded.
  document.addEventListener("toggle", set, true);
}
