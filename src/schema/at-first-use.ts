/**
 * Puts off what is dear to build until it is first asked for, and builds it once. Schemas stand so, since building them
 * took most of the time that importing a topic takes.
 */
export function atFirstUse<T>(build: () => T): () => T {
  let built: { readonly value: T } | undefined;
  return () => (built ??= { value: build() }).value;
}
