declare module 'marked-terminal' {
  /** Options of the terminal renderer that are used here. */
  export interface TerminalOptions {
    width?: number;
    reflowText?: boolean;
    tab?: number;
    showSectionPrefix?: boolean;
  }
  export function markedTerminal(options?: TerminalOptions): unknown;
}
