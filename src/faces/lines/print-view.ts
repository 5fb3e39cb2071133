import { questionAt } from '../../interview/questions/relevant';
import { answersToReadBack } from '../../interview/read-back';
import { type Row, rowsOf } from '../../interview/rows';
import type { Context, State } from '../../interview/state';
import { walkIds } from '../../interview/walk';
import { numberIn, sayUnit, words } from '../../interview/words';
import { actNowTexts, actNowTitle } from '../act-now-texts';
import { checkTitle, openWords } from '../check-words';
import { labelWords } from '../label-words';
import { leftWords, placeWords } from '../place-words';
import { planSoFarTitle, type SoFar, WAITING } from '../plan-so-far';
import { SOURCE, TONIGHT_HELP, TONIGHT_TITLE, tonightTexts } from '../tonight-texts';
import { unsureWords } from '../unsure-words';
import { WALK_TITLE, walkHint, walkTexts } from '../walk-texts';
import { WELCOME, WELCOME_TITLE } from '../welcome-words';
import { whyNowWords } from '../why-now-words';
import { lineWords, sayNewWords } from './line-words';

/** What to print for the screen as it stands, except what has to be weighed: plain sentences, most important words first, no borders. */
export function printView(
  context: Context,
  state: State,
  said: ReadonlySet<string> = new Set(),
  draft: SoFar | null = null,
): string[] {
  switch (state.view) {
    case 'welcome':
      return [WELCOME_TITLE, ...WELCOME];
    case 'ask':
      return askLines(context, state, said);
    case 'help':
      return helpLines(context, state);
    case 'label':
      return [words.labelAsk, ...labelWords(context, state), ...numbered(context, state)];
    case 'unusual':
      return [words.unusualAsk(state.unusual?.said ?? ''), ...numbered(context, state)];
    case 'act-now':
      return actNowLines(context, state);
    case 'walk':
      return walkLines(context, state);
    case 'wait':
      return [WAITING];
    case 'tonight-help':
      return [...TONIGHT_HELP];
    case 'tonight':
      return tonightLines(context, state);
    case 'first-plan':
    case 'enough':
      return [planSoFarTitle(context, state, draft), ...numbered(context, state)];
    case 'read-back':
      return readBackLines(context, state);
    case 'compare':
      // What changes is worked out first; the lines to choose from are printed behind it.
      return [words.compareTitle];
    case 'check':
      return [
        checkTitle(state),
        ...[openWords(context, state.answers) ?? []].flat(),
        `Type write to ${state.changing === null ? 'write the plan' : 'go back to the plan'}, list to hear your answers, a number to change one,${walkIds(context, state.answers).length > 0 ? ' walk for what to look at,' : ''} or stop.`,
      ];
  }
}

function askLines(context: Context, state: State, said: ReadonlySet<string>): string[] {
  const question = questionAt(context, state.at);
  const rows = rowsOf(context, state);
  const choices = rows.filter((row) => row.kind === 'choice');
  const unit = question.unit === undefined ? '' : `, in ${sayUnit(question.unit)}`;
  const how = {
    choice: 'Type a number',
    choices: 'Type one or more numbers, such as 1, 3',
    number: `Type ${numberIn(question.unit ?? 'count')}`,
    numbers: `Type ${question.count} numbers${unit}, with spaces or commas`,
    zip: 'Type the five digits',
    name: 'Type a name',
    text: `Type it as it reads, at most ${question.longest} letters`,
  }[question.kind];
  return [
    `${[placeWords(context, state), leftWords(context, state)].filter(Boolean).join('; ')}.`,
    question.ask,
    ...whyNowWords(state),
    `Hint: ${question.hint}.`,
    ...choices.map((row, i) => `${i + 1}. ${row.kind === 'choice' ? row.label : ''}`),
    `${how}${sayNewWords(lineWords(context, state), said)}.`,
  ];
}

function helpLines(context: Context, state: State): string[] {
  const question = questionAt(context, state.at);
  return [
    `Why we ask: ${question.why.trim()}`,
    `How to find out: ${question.find.trim()}`,
    `If you are not sure: ${unsureWords(context, state, question)}`,
    `Words you can type: ${lineWords(context, { ...state, view: 'ask' }).join(', ')}.`,
  ];
}

function actNowLines(context: Context, state: State): string[] {
  const texts = actNowTexts(context.interview, state).flatMap(({ title, lines }) => [
    ...(title === null ? [] : [`${title}.`]),
    ...lines,
  ]);
  return [`${actNowTitle(state)}.`, ...texts, ...numbered(context, state)];
}

function walkLines(context: Context, state: State): string[] {
  const texts = walkTexts(context, state).flatMap(({ title, lines }) => [
    `${title}:`,
    ...lines.map((line) => `${line}.`),
  ]);
  return [WALK_TITLE, ...texts, walkHint(state), ...numbered(context, state)];
}

function tonightLines(context: Context, state: State): string[] {
  const parts = tonightTexts(context.interview, state).flatMap(({ title, lines, source }) => [
    `${title}.`,
    ...lines,
    `${SOURCE}: ${source}.`,
  ]);
  return [`${TONIGHT_TITLE}.`, ...parts, ...numbered(context, state)];
}

function readBackLines(context: Context, state: State): string[] {
  const said = answersToReadBack(context, state.answers).map((one) => `${one.says}: ${one.said}.`);
  return [words.readBackTitle, ...said, ...numbered(context, state)];
}

/** The rows to choose by number, as they are printed. */
export const printRows = (context: Context, state: State): string[] => numbered(context, state);

function numbered(context: Context, state: State): string[] {
  return spokenRows(context, state).map(
    (row, i) => `${i + 1}. ${row.kind === 'act' ? row.label : ''}`,
  );
}

/** The rows to choose by number. What must be read first has been printed above them. */
export function spokenRows(context: Context, state: State): Row[] {
  return rowsOf(context, state).filter((row) => row.kind !== 'act' || row.act !== 'read');
}

/** The answers so far, numbered as they can be chosen. */
export function printList(context: Context, state: State): string[] {
  const rows = rowsOf(context, { ...state, view: 'check' }).filter((row) => row.kind === 'answer');
  return rows.map((row, i) => (row.kind === 'answer' ? `${i + 1}. ${row.label}: ${row.said}` : ''));
}
