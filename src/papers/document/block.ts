import type { Picture } from '../pictures/picture';

/** What a paper is made of, apart from any format. Texts are plain: no format reads marks in them. */
export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'say'; readonly text: string; readonly strong?: boolean }
  | { readonly kind: 'bullets'; readonly items: readonly string[] }
  /** Steps in their order; with a box to tick where they are done one by one. */
  | { readonly kind: 'steps'; readonly items: readonly string[]; readonly boxes?: boolean }
  /** Things to tick, in no order. */
  | { readonly kind: 'boxes'; readonly items: readonly string[] }
  /** Names with a line to write on. */
  | { readonly kind: 'blanks'; readonly names: readonly string[] }
  | {
      readonly kind: 'table';
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
    }
  | { readonly kind: 'picture'; readonly picture: Picture };

/** A block, or nothing where it would be empty. */
export function unlessEmpty(block: Block): Block[] {
  const count =
    'items' in block
      ? block.items.length
      : 'rows' in block
        ? block.rows.length
        : 'names' in block
          ? block.names.length
          : 1;
  return count === 0 ? [] : [block];
}

/** A heading over blocks, or nothing where there are none. */
export function section(heading: string, ...blocks: readonly Block[]): Block[] {
  const filled = blocks.flatMap(unlessEmpty);
  return filled.length === 0 ? [] : [{ kind: 'heading', text: heading }, ...filled];
}
