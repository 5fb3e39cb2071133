/** What is slow to work out, worked out when it is asked for first, and kept. It must not change. What it was made from is let go then. */
export function onceMade<T>(make: () => T): () => T {
  let todo: (() => T) | null = make;
  let made: { readonly value: T } | null = null;
  return () => {
    if (todo !== null) {
      made = { value: todo() };
      todo = null;
    }
    return made!.value;
  };
}
