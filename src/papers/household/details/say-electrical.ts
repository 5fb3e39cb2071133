import { loadNames } from '../../../home/load-names';
import { neutralAmpsOf } from '../../../plan/electrical/load-calculation';
import { isWired } from '../../../plan/electrical/route-traits';
import type { Plan } from '../../../plan/plan';
import { formatQuantity } from '../../../quantity/format-quantity';
import type { Words } from '../../../words/words';

/** The electrical half in a few lines; everything else stands in the plan file. */
export function electricalLines(plan: Plan, words: Words): string[] {
  const { electrical: e, advice } = plan;
  const neutral = neutralAmpsOf(e.loadCalculation);
  const load = `Load calculation: ${e.loadCalculation.says}${neutral === null ? '' : ` The service neutral carries ${Math.round(neutral)} A of it (220.61).`}`;
  if (!isWired(advice.route)) return [load, ...e.solarRow];
  return [
    load,
    ...(e.metered.kind === 'done' ? [`Metered demand: ${e.metered.says}`] : []),
    ...busLine(plan),
    ...e.panelFit.traps,
    ...wayOutLine(plan),
    ...startLine(plan),
    ...highEndLines(plan, words),
    ...wireLines(plan),
    ...e.solarRow,
    ...e.siting
      .filter((point) => point.verdict === 'no' || point.verdict === 'ask')
      .map((point) => `${point.says} (${point.cite})`),
  ];
}

function busLine({ electrical: { panelFit: fit } }: Plan): string[] {
  if (fit.sourceAt125Amps === null) return [];
  const fitting = fit.ways.filter((way) => way.fits === 'yes');
  const need = `Source on the panel: 1.25 x its current is ${Math.round(fit.sourceAt125Amps)} A`;
  if (fitting.length > 0)
    return [
      `${need}; it fits with the ${fitting.map((way) => `${way.way} (${way.sections.edition2023})`).join(', or the ')}.`,
    ];
  const known = fit.ways.some((way) => way.roomAmps !== null);
  return [
    `${need}; ${known ? 'the bus has no room for it by the sums known here' : 'main and bus are not both known, so the bus check waits for the electrician'} (705.12).`,
  ];
}

function wayOutLine({ electrical: { waysOut } }: Plan): string[] {
  const [first] = waysOut;
  return first === undefined
    ? []
    : [
        `Cheapest way out here: ${first.way}, $${first.usdLow} to $${first.usdHigh} (${first.year}), where ${first.when}.`,
      ];
}

function startLine({ electrical, advice, home }: Plan): string[] {
  const start = electrical.starting.find((one) => one.route === advice.route.kind);
  if (start === undefined || start.starting.length === 0) return [];
  const need = advice.route.power!.startDemandVa;
  const kva = (va: number) => (va / 1000).toFixed(1);
  return [
    `Hardest start: ${loadNames(home, start.starting).join(' and ')}${start.starting.length > 1 ? ' together' : ''}, with the rest that it carries running, ${kva(need.value)} kVA likely and ${kva(need.high)} kVA at the high end. Everything that starts by itself at the same moment, as when power comes back: ${kva(start.allAtOnceVa)} kVA. What the source lends for a moment: ${kva(start.surgeVa)} kVA. Cure: ${start.cure}.`,
  ];
}

/** Where the need of the route advised may be more than it gives. */
export function highEndLines({ electrical, advice, home }: Plan, words: Words): string[] {
  return electrical.highEnd
    .filter((gap) => gap.route === advice.route.kind)
    .map((gap) => words.highEnd(home, gap));
}

function wireLines({ electrical }: Plan): string[] {
  return electrical.wires.map((run) => {
    const copper = run.sizes.find((size) => size.metal === 'copper')!;
    const length = `${Math.round(run.oneWayFt)} ft one way (${run.lengthFrom})`;
    const size =
      copper.size === null
        ? `no usual size for ${length}; shorten the run`
        : `${copper.size} AWG copper by the ${copper.columnC} °C column; at ${formatQuantity(run.loadAmps, 'A')}, ${run.volts} V and ${length} the voltage drops ${copper.dropPercent!.toFixed(1)} %`;
    return `${run.run}, ${run.breakerAmps} A breaker: planning size ${size}.`;
  });
}
