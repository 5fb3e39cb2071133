import { hasFixedBattery, hasGenerator, isSource, isWired } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { type Block, section } from '../document/block';
import type { Sheet } from './sheet';

type FileSheet = 'inspector' | 'insurer' | 'landlord' | 'utility';

/**
 * Forms of letter for whom this plan has to ask, each a sheet of its own: the department where something is wired or
 * fuel is kept, the landlord or association where there is one, the power company where a battery runs beside the
 * grid or something is wired; the insurer always where there is a source.
 */
export function fileSheets(plan: Plan, words: Words): Sheet[] {
  const { route } = plan.advice;
  const of = traitsOf[route.kind];
  if (!isSource(of)) return [];
  return (
    [
      ...(isWired(of) || hasGenerator(of) ? (['inspector'] as const) : []),
      'insurer',
      ...(hasLandlord(plan) ? (['landlord'] as const) : []),
      ...(isWired(of) || hasFixedBattery(of) ? (['utility'] as const) : []),
    ] as const
  ).map((id) => sheetFor(plan, id, words));
}

function hasLandlord({ home: { facts } }: Plan): boolean {
  const rents = facts.told('home-tenure') && facts.is('home-tenure', 'rent');
  const association = facts.told('association-rule');
  return rents || association || facts.is('home-kind', 'apartment');
}

function sheetFor(plan: Plan, id: FileSheet, words: Words): Sheet {
  const { route } = plan.advice;
  const of = traitsOf[route.kind];
  const say = (text: string): Block => ({ kind: 'say', text });
  const its = words.sheets.file[id];
  return {
    id,
    title: its.title,
    purpose: its.purpose,
    blocks: [
      { kind: 'blanks', names: words.sheets.file.from },
      say(words.sheets.file.planned(words.inSentence(words.routeTitle(route.called)))),
      ...(plan.state === 'draft' ? [say(words.sheets.file.draft)] : []),
      ...section(words.sheets.file.parts, {
        kind: 'bullets',
        items: route.parts.map((part) => words.part(part.called)),
      }),
      ...(isWired(of) ? [say(words.sheets.file.by)] : []),
      ...(id === 'inspector' ? power(plan, words) : []),
      ...(id === 'utility'
        ? [
            say(
              isWired(of) ? words.sheets.file.utility.isolated : words.sheets.file.utility.plugged,
            ),
          ]
        : []),
      { kind: 'steps', items: its.asks },
      ...section(words.sheets.file.answer, {
        kind: 'blanks',
        names: words.sheets.file.answerNames,
      }),
    ],
  };
}

function power({ advice: { route } }: Plan, words: Words): Block[] {
  if (route.power === null) return [];
  const { runningWatts: w, startDemandVa: va } = route.power;
  return section(words.sheets.file.inspector.load, {
    kind: 'say',
    text: words.sheets.file.inspector.circuits(
      words.range(w.low, w.value, w.high, 'W'),
      words.range(va.low, va.value, va.high, 'VA'),
    ),
  });
}
