import { neutralAmpsOf } from '../../../plan/electrical/load-calculation';
import { isWired } from '../../../plan/electrical/route-traits';
import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';

/** The electrical half in a few lines; everything else stands in the plan file. */
export function electricalLines(plan: Plan, words: Words): string[] {
  const { electrical: e, advice } = plan;
  const neutral = neutralAmpsOf(e.loadCalculation);
  const say = words.household.electrical;
  const load = `${say.loadCalculation(e.loadCalculation)}${neutral === null ? '' : say.neutral(neutral)}`;
  if (!isWired(advice.route)) return [load, ...e.solarRow.map(words.forElectrician.solarRow)];
  return [
    load,
    ...(e.metered.kind === 'done' ? [say.metered(e.metered)] : []),
    ...busLine(plan, words),
    ...e.panelFit.traps.map(words.forElectrician.panelTrap),
    ...(e.waysOut.length > 0 ? [say.wayOut(e.waysOut[0]!)] : []),
    ...startLine(plan, words),
    ...e.wires.map(say.wire),
    ...e.solarRow.map(words.forElectrician.solarRow),
    ...e.siting
      .filter((point) => point.verdict === 'no' || point.verdict === 'ask')
      .map(say.siting),
  ];
}

function busLine({ electrical: { panelFit: fit } }: Plan, words: Words): string[] {
  if (fit.sourceAt125Amps === null) return [];
  const fitting = fit.ways.filter((way) => way.fits === 'yes');
  const known = fit.ways.some((way) => way.roomAmps !== null);
  return [words.household.electrical.onThePanel(fit.sourceAt125Amps, fitting, known)];
}

function startLine({ electrical, advice, home }: Plan, words: Words): string[] {
  const start = electrical.starting.find((one) => one.route === advice.route.kind);
  if (start === undefined || start.starting.length === 0) return [];
  const { startDemandVa } = advice.route.power!;
  return [words.household.electrical.hardestStart(home, startDemandVa, start)];
}

/** Where the need of the route advised may be more than it gives. */
export function highEndLines({ electrical, advice, home }: Plan, words: Words): string[] {
  return electrical.highEnd
    .filter((short) => short.route === advice.route.kind)
    .map((short) => words.highEnd(home, short));
}
