import { english } from '../../../src/words/en';
import type { Held, Seen } from '../seen';

/** A figure as it was read in a paper, and where. */
interface Read {
  readonly at: string;
  readonly says: string;
}

/** One thing of the plan and every place it was read in. */
type Readings = Readonly<Record<string, readonly Read[]>>;

/** What is said twice and not alike; null where nothing was read twice. */
function disagreements(readings: Readings): string[] | null {
  const twice = Object.entries(readings).filter(([, reads]) => reads.length > 1);
  if (twice.length === 0) return null;
  return twice.flatMap(([what, reads]) => {
    const said = new Set(reads.map((read) => read.says));
    return said.size === 1
      ? []
      : [`${what}: ${reads.map((read) => `${read.at} says ${read.says}`).join('; ')}`];
  });
}

/** Every place where a pattern with one figure in it stands in a text. */
function reads(at: string, text: string, pattern: RegExp): Read[] {
  return [...text.matchAll(pattern)].map(([, says]) => ({ at, says: says! }));
}

const usd = (dollars: number) => `$${Math.round(dollars).toLocaleString('en-US')}`;
const escaped = (title: string) => title.replace(/[^\w ]/g, '.');
const detailsOf = ({ text, front }: Seen) => text.slice(front.length);

/** A section of the details, by its title. */
const section = (text: string, title: string) =>
  text.split(`\n## ${title}\n`)[1]?.split('\n## ')[0] ?? '';

/** A row of the table of routes, which stands as a table or, where it is wide, as a list of its cells. */
function sideRow(side: string, title: string) {
  const cells = new RegExp(`^\\| ${escaped(title)} \\|(.*)\\|$`, 'm').exec(side)?.[1]?.split('|');
  if (cells !== undefined) return { carries: cells[0]!, hours: cells[1]!.trim(), cost: cells[2]! };
  const list = new RegExp(
    `^- ${escaped(title)}: of what must run (.+?); how long .careful count. (.+); cost installed (.+?);`,
    'm',
  ).exec(side);
  return list === null ? null : { carries: list[1]!, hours: list[2]!, cost: list[3]! };
}

/** What a route costs to begin with and what an hour of outage costs, in the table of the money or its list. */
function moneyRow(money: string, title: string) {
  const cells = new RegExp(`^\\| ${escaped(title)} \\|(.*)\\|$`, 'm').exec(money)?.[1]?.split('|');
  const line =
    cells?.join('; ') ?? new RegExp(`^- ${escaped(title)}: (.*)$`, 'm').exec(money)?.[1] ?? null;
  if (line === null) return null;
  const begins = cells?.[0]?.trim() ?? /^to begin with (.+?);/.exec(line)?.[1];
  return {
    // One dollar figure is a quote of the household.
    begins: begins !== undefined && / to /.test(begins) ? begins : undefined,
    carries: /carries \d+ of \d+/.exec(line)?.[0],
  };
}

/** The price of a route is one wherever it stands: first page, table, list, money, plan file. */
export const onePrice: Held = (seen) => {
  if (seen.plan.undecided.length > 0) return null;
  const readings: Record<string, Read[]> = {};
  const side = section(seen.text, 'The routes side by side');
  const money = section(seen.text, 'Does it pay');
  for (const { title, cost, verdict } of seen.data.routes) {
    if (verdict === 'cannot') continue;
    const found: Read[] = [{ at: 'the plan file', says: `${usd(cost.low)} to ${usd(cost.high)}` }];
    const range = /(\$[\d,]+) (?:\((\$[\d,]+) to (\$[\d,]+)\))/;
    const from = (at: string, text: string | null | undefined) => {
      const [, , low, high] = range.exec(text ?? '') ?? [];
      if (low !== undefined) found.push({ at, says: `${low} to ${high}` });
    };
    from('the table of routes', sideRow(side, title)?.cost);
    from('the other routes', new RegExp(`^- ${escaped(title)}: .*$`, 'm').exec(side)?.[0]);
    const begins = moneyRow(money, title)?.begins;
    // A quote of the household stands in the money alone, and what comes back is said beside.
    const quoted = money.includes(`${title}, by your quote`);
    if (begins !== undefined && !quoted && !begins.endsWith('after money back'))
      found.push({ at: 'the money', says: begins });
    readings[title] = found;
  }
  return disagreements(readings);
};

/** The hours of the route advised are one wherever they stand, by each count. */
export const oneCountOfHours: Held = ({ plan, data, front, text }) => {
  if (plan.undecided.length > 0) return null;
  const route = data.routes.find(({ kind }) => kind === data.advised.route)!;
  if (typeof route.lastsHours === 'string' || route.carries.length === 0) return null;
  const cell = sideRow(section(text, 'The routes side by side'), route.title)?.hours ?? '';
  const one = String.raw`((?:\d+ days?(?: \d+ h)?|\d+ (?:h|min)))`;
  const ride = section(text, 'How it rides through');
  return disagreements({
    'likely hours': [
      ...reads(
        'the first page',
        front,
        new RegExp(`How long(?: for the rest)?: (?:about|just under) ${one}`, 'g'),
      ),
      ...reads('the table of routes', cell, new RegExp(`^${one}`, 'g')),
      ...reads(
        'what fails first',
        ride,
        new RegExp(
          `^${escaped(route.title)}: first, [^.]*? after ${one} by the likely count`,
          'gm',
        ),
      ),
    ],
    'careful hours': [
      ...reads(
        'the first page',
        front,
        new RegExp(`How long(?: for the rest)?: [^;.]*?careful count ${one}`, 'g'),
      ),
      ...reads('the table of routes', cell, new RegExp(`^[^(;]*\\(${one}\\)`, 'g')),
    ],
    'likely hours with the cans filled': [
      ...reads('the first page', front, new RegExp(`stored about ${one}`, 'g')),
      ...reads('the table of routes', cell, new RegExp(`with the cans filled ${one}`, 'g')),
    ],
  });
};

/** How much of what must run a route carries is one count, and what must run is one number. */
export const oneCountOfThings: Held = (seen) => {
  if (seen.plan.undecided.length > 0) return null;
  const details = detailsOf(seen);
  const side = section(seen.text, 'The routes side by side');
  const ride = section(seen.text, 'How it rides through');
  const money = section(seen.text, 'Does it pay');
  const readings: Record<string, Read[]> = {
    'what must run': [
      ...reads('the route advised', details, /It carries all (\d+) that must keep running/g),
      ...reads('the route advised', details, /It carries \d+ of the (\d+) that must keep/g),
      ...reads('the tables and lists', side + ride + money, /(?<![\d$,])\d+ of (\d+)(?= ?[,|);])/g),
      ...reads('how it rides', ride, /\| all (\d+) (?=\|)/g),
    ],
  };
  for (const { title } of seen.data.routes) {
    const all = (text: string) => text.trim().replace(/^carries /, '');
    const cell = sideRow(side, title)?.carries;
    const listed = new RegExp(`^- ${escaped(title)}: (all|none|\\d+ of \\d+),`, 'm').exec(
      side,
    )?.[1];
    const paid = moneyRow(money, title)?.carries;
    readings[title] = [
      ...(cell === undefined ? [] : [{ at: 'the table of routes', says: all(cell) }]),
      ...(listed === undefined ? [] : [{ at: 'the other routes', says: all(listed) }]),
      ...(paid === undefined ? [] : [{ at: 'the money', says: all(paid) }]),
      ...reads(
        'the other batteries',
        ride,
        new RegExp(`${escaped(title)} \\(carries (\\d+ of \\d+)\\)`, 'g'),
      ),
    ];
  }
  return disagreements(readings);
};

/** Gallons to buy, to store and for the goal. */
export const oneCountOfGallons: Held = (seen) => {
  if (seen.plan.undecided.length > 0 || seen.plan.advice.route.fuel === null) return null;
  const { front } = seen;
  const advised = detailsOf(seen).split('\n## The one advised')[1]?.split('\n## ')[0] ?? '';
  const wontDo = section(seen.text, 'What it will not do');
  return disagreements({
    'for the goal, careful': [
      ...reads('the first page', front, /careful count: ([\d.,]+) gal of/g),
      ...reads('the details', advised, /by the careful count ([\d.,]+) gal/g),
    ],
    'still to be stored': [
      ...reads('the first page', front, /cans for ([\d.,]+) (?:more )?gal of/g),
      ...reads('the parts', advised, /cans for ([\d.,]+) (?:more )?gal of/g),
      ...reads('what to store', advised, /Store ([\d.,]+) (?:more )?gallons?/g),
      ...reads('what it will not do', wontDo, /With the ([\d.,]+) gallons? still/g),
    ],
    'once all is stored': [
      ...reads('the first page', front, /with ([\d.,]+) gal stored about/g),
      ...reads('the details', advised, /\(([\d.,]+) gal in all\)/g),
    ],
  });
};

/** What is worth having beside the route has one price. */
export const oneAddOnPrice: Held = (seen) => {
  if (seen.plan.undecided.length > 0 || seen.plan.addOns.length === 0) return null;
  return disagreements(
    Object.fromEntries(
      seen.plan.addOns.map(english.addOn.name).map((name) => {
        const pattern = new RegExp(
          `${escaped(name)}[:,] (\\$[\\d,]+ \\([^)]*\\)|\\$[\\d,]+)`,
          'gi',
        );
        return [
          name,
          [
            ...reads('the first page', seen.front, pattern),
            ...reads('the details', detailsOf(seen), pattern),
          ],
        ];
      }),
    ),
  );
};

/** Where nobody is to be called, no step and no grave caution told sends for an electrician. */
export const nobodyToCall: Held = ({ plan, data, front, text }) => {
  if (plan.undecided.length > 0) return null;
  const nobody = front.includes('no electrician for this route');
  const yes = front.includes('a licensed electrician');
  const steps = data.nextSteps.filter(({ who }) => who === 'licensed electrician');
  const where = section(text, 'Where a licensed electrician is required');
  const grave = data.cautions.filter(
    (one) =>
      !one.careful &&
      one.severity >= 4 &&
      one.who[0] === 'licensed electrician' &&
      where.includes(one.says.split(/(?<=[.!?]) /)[0]!),
  );
  return [
    ...(nobody && data.electricianFor !== 'nothing' ? ['the plan file calls one'] : []),
    ...(!nobody && data.electricianFor === 'nothing' && !yes ? ['nobody says whom to call'] : []),
    ...(nobody ? steps.map(({ id }) => `no electrician, but the step ${id}`) : []),
    ...(nobody ? grave.map(({ id }) => `no electrician, but required by ${id}`) : []),
    ...(steps.length > 0 && !yes ? ['a step for an electrician, and none on the first page'] : []),
  ];
};
