/** The few signs that are not letters. Each has an ASCII form. */
export interface Glyphs {
  /** The terminal shows more than ASCII. */
  readonly modern: boolean;
  readonly cut: string;
  readonly bar: string;
  readonly above: string;
  readonly below: string;
  /** Stands for what is hidden. */
  readonly dots: string;
}

const UNICODE: Glyphs = { modern: true, cut: '…', bar: '│', above: '↑', below: '↓', dots: '•••' };
const ASCII: Glyphs = { modern: false, cut: '...', bar: '|', above: '^', below: 'v', dots: 'xxx' };

/** The signs a terminal can show, judged by its locale. */
export function glyphsFor(env: Readonly<Record<string, string | undefined>>): Glyphs {
  const locale = env.LC_ALL || env.LC_CTYPE || env.LANG || '';
  const modern = /utf-?8/i.test(locale) || env.WT_SESSION !== undefined;
  return modern && env.TERM !== 'linux' ? UNICODE : ASCII;
}
