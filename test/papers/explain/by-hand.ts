/** Reads printed arithmetic as somebody with a pocket calculator would, from the lines alone. */

export interface PrintedStep {
  readonly result: number;
  /** Digits behind the point of the result. */
  readonly places: number;
  readonly right: string;
  /** Numbers told of in the lines one step further in. */
  readonly below: string[];
}

/** Lines that were broken put together again: later lines stand four further in than their first. */
export function unwrapped(lines: readonly string[]): string[] {
  const whole: string[] = [];
  for (const line of lines) {
    const before = whole.at(-1);
    const breaks =
      before !== undefined && line.trim() !== '' && indentOf(line) >= indentOf(before) + 4;
    if (breaks) whole[whole.length - 1] = `${before} ${line.trim()}`;
    else whole.push(line);
  }
  return whole;
}

const indentOf = (line: string) => line.length - line.trimStart().length;
const NUMBER = /-?\$?\d[\d,]*(?:\.\d+)?%?/;
const STEP = /^\s*(-?\$?\d[^=:]*) = (.+)$/;

export function stepsIn(lines: readonly string[]): PrintedStep[] {
  return lines.flatMap((line, at) => {
    const read = STEP.exec(line);
    if (read === null) return [];
    const result = NUMBER.exec(read[1]!)![0];
    const under: string[] = [];
    for (const next of lines.slice(at + 1)) {
      if (indentOf(next) <= indentOf(line)) break;
      if (indentOf(next) === indentOf(line) + 2 && !STEP.test(next))
        under.push(NUMBER.exec(next)![0]);
    }
    return [
      {
        result: numberIn(result),
        places: /\.(\d+)/.exec(result)?.[1]?.length ?? 0,
        right: read[2]!,
        below: [...new Set(under)],
      },
    ];
  });
}

/** Every number right of the equals sign, as printed; not that to which it is rounded. */
export function operandsIn(right: string): string[] {
  return right
    .replace(/, (?:to the nearest|up to the next) .*/, '')
    .match(new RegExp(NUMBER, 'g'))!;
}

/** What the right side comes to. */
export function worked(right: string): number {
  const round = /^(.+), (to the nearest|up to the next) (.+)$/.exec(right);
  if (round !== null) {
    const to = numberIn(round[3]!);
    const times = one(round[1]!) / to;
    return to * (round[2] === 'to the nearest' ? Math.round(times) : Math.ceil(times));
  }
  const among = /^the (larger|smaller) of (.+)$/.exec(right);
  if (among !== null) {
    const all = among[2]!.split(' and ').map(one);
    return among[1] === 'larger' ? Math.max(...all) : Math.min(...all);
  }
  return right
    .split(' + ')
    .map((term) =>
      term
        .split(' - ')
        .map(product)
        .reduce((a, b) => a - b),
    )
    .reduce((a, b) => a + b, 0);
}

function product(term: string): number {
  const [first, ...under] = term.split(' / ');
  const over = first!.split(' x ').map(one);
  return under.map(one).reduce(
    (a, b) => a / b,
    over.reduce((a, b) => a * b, 1),
  );
}

const one = (text: string) => numberIn(NUMBER.exec(text)![0]);
const numberIn = (number: string) => Number(number.replaceAll(/[$,%]/g, ''));
