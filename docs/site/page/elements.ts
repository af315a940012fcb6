/** The element with an id, which the page has. */
export function element<Kind extends HTMLElement>(id: string, kind: abstract new () => Kind): Kind {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${kind.name} ${id}`);
}

/** Runs the last of several calls in a row, once there has been quiet for a while. */
export function afterQuiet(wait: number, run: () => void): { readonly later: () => void; readonly cancel: () => void } {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const cancel = (): void => {
    clearTimeout(timer);
  };
  return {
    later(): void {
      cancel();
      timer = setTimeout(run, wait);
    },
    cancel,
  };
}
