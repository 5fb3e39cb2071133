/** What is slow to work out, worked out when it is asked for first, and kept. It must not change. */
export function onceMade<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
