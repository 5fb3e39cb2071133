/** One key press, or one paste, as the interview understands it. */
export type Key =
  | { readonly name: 'text'; readonly text: string; readonly pasted?: boolean }
  | {
      readonly name:
        | 'enter'
        | 'escape'
        | 'tab'
        | 'backspace'
        | 'up'
        | 'down'
        | 'left'
        | 'right'
        | 'home'
        | 'end'
        | 'page-up'
        | 'page-down'
        | 'ctrl-c'
        | 'ctrl-s'
        | 'ctrl-u'
        | 'later'
        | 'delete'
        | 'word-left'
        | 'word-right'
        | 'erase-word'
        | 'erase-right'
        | 'ctrl-z'
        /** Show for a moment what a shared screen hides. */
        | 'show';
    };
