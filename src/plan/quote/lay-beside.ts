import type { LoadId } from '../../home/loads/load-id';
import { healthHangs, isHealthDevice } from '../../home/people/health-devices';
import { isSource, isWired } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { RuleId } from '../../tables/rules';
import type { Plan } from '../plan';
import type { Quote, QuotedTransfer, QuoteLine } from './quote';

/** What the plan asks for in figures; three ends where they differ. */
export interface Asked {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly unit: '$' | 'kWh' | 'W' | 'VA' | 'weeks';
}

/**
 * How a line of the quote stands to the plan: it does; it does by the likely count alone; it does less; it costs or takes
 * less or more than the range of the plan; the quote does not say; the plan asks for none.
 */
export type Standing = 'does' | 'likely-only' | 'less' | 'under' | 'over' | 'silent' | 'not-asked';

/** One line: what the plan asks, what the quote says, how the two stand. */
export interface LaidLine {
  readonly line: QuoteLine;
  readonly asked: Asked | null;
  readonly standing: Standing;
}

/** What a quote lacks that could kill, break the law or leave a life unguarded. */
export type QuoteCaution =
  | 'no-permit'
  | 'no-license'
  | 'no-transfer'
  | 'leaves-out-device'
  | 'leaves-out-must'
  | 'too-weak-to-start';

export interface Beside {
  readonly lines: readonly LaidLine[];
  readonly cautions: readonly { readonly code: QuoteCaution; readonly rule: RuleId | null }[];
  /** Of what it leaves out, what health hangs on and what else must run. */
  readonly missed: { readonly devices: readonly LoadId[]; readonly must: readonly LoadId[] };
  readonly transferAsked: QuotedTransfer;
}

/** The rule that says the danger whole, where there is one. */
const rules: Readonly<Record<QuoteCaution, RuleId | null>> = {
  'no-permit': 'panel-work-licensed',
  'no-license': 'panel-work-licensed',
  'no-transfer': 'no-backfeed',
  'leaves-out-device': 'second-source',
  'leaves-out-must': null,
  'too-weak-to-start': null,
};

/** A quote laid beside the route advised, line by line. What it does not say counts as lacking where life or law hang on it. */
export function layBeside(plan: Plan, quote: Quote): Beside {
  const { route } = plan.advice;
  const wired = isWired(traitsOf[route.kind]);
  const missed = missedIn(plan, quote);
  const lines: LaidLine[] = [
    priceLine(plan, quote),
    capacity('usableKwh', quote.usableKwh, storageOf(plan)),
    capacity('continuousWatts', quote.continuousWatts, powerOf(plan, 'runningWatts', 'W')),
    capacity('startingVa', quote.startingVa, powerOf(plan, 'startDemandVa', 'VA')),
    {
      line: 'transfer',
      asked: null,
      standing: transferStanding(quote.transfer, transferAsked(plan)),
    },
    { line: 'leavesOut', asked: null, standing: leavesOutStanding(plan, quote, missed) },
    { line: 'permitIncluded', asked: null, standing: yesNo(quote.permitIncluded, wired) },
    { line: 'licenseNamed', asked: null, standing: yesNo(quote.licenseNamed, wired) },
    {
      line: 'warrantyYears',
      asked: null,
      standing: quote.warrantyYears === null ? 'silent' : 'does',
    },
    weeksLine(plan, quote),
  ];
  const lacking = (line: QuoteLine) => {
    const { standing } = lines.find((one) => one.line === line)!;
    return standing === 'less' || standing === 'silent';
  };
  const codes: [boolean, QuoteCaution][] = [
    [missed.devices.length > 0, 'leaves-out-device'],
    [lacking('transfer'), 'no-transfer'],
    [lacking('permitIncluded'), 'no-permit'],
    [lacking('licenseNamed') && !lacking('permitIncluded'), 'no-license'],
    [missed.must.length > 0, 'leaves-out-must'],
    [
      lines.some(({ line, standing }) => line === 'startingVa' && standing === 'less'),
      'too-weak-to-start',
    ],
  ];
  return {
    lines,
    cautions: codes.flatMap(([yes, code]) => (yes ? [{ code, rule: rules[code] }] : [])),
    missed,
    transferAsked: transferAsked(plan),
  };
}

/** What must move the house over by the plan: nothing where things are plugged in. */
function transferAsked({ advice }: Plan): QuotedTransfer {
  const of = traitsOf[advice.route.kind];
  if (!isSource(of) || !isWired(of)) return 'none';
  return of.automatic ? 'automatic' : 'interlock';
}

/** By hand where the plan counts on a source that takes over by itself is less. */
function transferStanding(quoted: QuotedTransfer | null, asked: QuotedTransfer): Standing {
  if (asked === 'none') return 'not-asked';
  if (quoted === null) return 'silent';
  if (quoted === 'none') return 'less';
  return asked === 'automatic' && quoted !== 'automatic' ? 'likely-only' : 'does';
}

const yesNo = (told: boolean | null, asked: boolean): Standing =>
  !asked ? 'not-asked' : told === null ? 'silent' : told ? 'does' : 'less';

function capacity(line: QuoteLine, told: number | null, asked: Asked | null): LaidLine {
  if (asked === null) return { line, asked, standing: 'not-asked' };
  if (told === null) return { line, asked, standing: 'silent' };
  const standing = told >= asked.high ? 'does' : told >= asked.likely ? 'likely-only' : 'less';
  return { line, asked, standing };
}

function storageOf({ advice: { route } }: Plan): Asked | null {
  const { usableKwh: kwh } = route;
  return kwh === null ? null : { low: kwh, likely: kwh, high: kwh, unit: 'kWh' };
}

function powerOf(
  { advice: { route } }: Plan,
  of: 'runningWatts' | 'startDemandVa',
  unit: 'W' | 'VA',
): Asked | null {
  if (route.power === null) return null;
  const { low, value, high } = route.power[of];
  return { low, likely: value, high, unit };
}

/** Within the range of the plan it does; below it something may be missing from the quote. */
function priceLine({ advice: { route } }: Plan, { priceUsd }: Quote): LaidLine {
  const { low, value, high } = route.costUsd;
  return within('priceUsd', priceUsd, { low, likely: value, high, unit: '$' });
}

function weeksLine({ money, advice }: Plan, { weeks }: Quote): LaidLine {
  const own = money.routes.find((one) => one.kind === advice.route.kind);
  if (own === undefined || own.leadWeeks.high === 0)
    return { line: 'weeks', asked: null, standing: weeks === null ? 'silent' : 'does' };
  const { low, high } = own.leadWeeks;
  const asked = { low, likely: high, high, unit: 'weeks' } as const;
  const laid = within('weeks', weeks, asked);
  return laid.standing === 'under' ? { ...laid, standing: 'does' } : laid;
}

function within(line: QuoteLine, told: number | null, asked: Asked): LaidLine {
  if (told === null) return { line, asked, standing: 'silent' };
  const standing = told > asked.high ? 'over' : told < asked.low ? 'under' : 'does';
  return { line, asked, standing };
}

function missedIn({ home, advice }: Plan, { leavesOut }: Quote): Beside['missed'] {
  const out = home.loads.filter(
    ({ id, rank }) =>
      rank === 'must' && leavesOut?.includes(id) === true && advice.route.carries.includes(id),
  );
  return {
    devices: out.filter(isHealthDevice).map(({ id }) => id),
    must: out.filter((load) => !isHealthDevice(load)).map(({ id }) => id),
  };
}

function leavesOutStanding(
  { home }: Plan,
  { leavesOut }: Quote,
  missed: Beside['missed'],
): Standing {
  if (leavesOut === null) return 'silent';
  if (missed.devices.length > 0 || missed.must.length > 0) return 'less';
  // A good-to-have thing left out is a choice, and with health at stake each is talked over.
  return leavesOut.length > 0 && healthHangs(home) ? 'likely-only' : 'does';
}
