import { canWait, mustLeave } from './dangers';
import type { Question } from './questions/question';
import { offered, questionAt, relevant } from './questions/relevant';
import { sayAnswer } from './say-answer';
import type { Context, State } from './state';
import { offersTonight } from './tonight';
import { placeOf, walkIds } from './walk';
import { placeWord, words } from './words';

export type Act =
  | 'begin'
  | 'not-sure'
  | 'later'
  | 'walk'
  | 'found'
  | 'back'
  | 'help'
  | 'stop'
  | 'draft'
  | 'yes'
  | 'again'
  | 'label'
  | 'read'
  | 'go-on'
  | 'more'
  | 'rest'
  | 'stop-now'
  | 'tonight'
  | 'write'
  | 'all-so'
  | 'keep'
  | 'drop'
  | 'change-more';

/** A line on the screen that can be highlighted and chosen. */
export type Row =
  | { readonly kind: 'field' }
  | {
      readonly kind: 'choice';
      readonly id: string;
      readonly label: string;
      readonly ticked: boolean;
    }
  | { readonly kind: 'answer'; readonly id: string; readonly label: string; readonly said: string }
  | { readonly kind: 'act'; readonly act: Act; readonly label: string };

/** The rows of the screen as it stands, top to bottom. */
export function rowsOf(context: Context, state: State): Row[] {
  const question = questionAt(context, state.at);
  switch (state.view) {
    case 'welcome':
      return [act('begin', words.begin)];
    case 'unusual':
      return [
        act('yes', words.unusualYes(state.unusual?.said ?? '')),
        act('again', words.unusualNo),
      ];
    case 'label':
      return [act('label', words.labelYes), act('again', words.unusualNo)];
    case 'help':
      return [act('back', 'Back to the question')];
    case 'act-now':
      return actNowRows(context, state);
    case 'walk':
      return walkRows(context, state);
    case 'wait':
      return [];
    case 'enough':
      return enoughRows(context, state);
    case 'tonight-help':
      return [act('back', words.backToPage)];
    case 'tonight':
      return [act('go-on', words.toPlanning), act('stop-now', words.endTonight)];
    case 'first-plan':
      return firstPlanRows(context);
    case 'read-back':
      return [
        act('read', words.readFirst),
        act('all-so', words.allSo),
        act('back', words.notAllSo),
      ];
    case 'compare':
      return [
        act('keep', words.keep),
        act('drop', words.drop),
        act('change-more', words.changeMore),
        act('stop', words.stopChanged),
      ];
    case 'check':
      return checkRows(context, state);
    case 'ask':
      return askRows(context, state, question);
  }
}

function askRows(context: Context, state: State, question: Question): Row[] {
  const own: Row[] =
    question.choices === undefined
      ? [{ kind: 'field' }]
      : offered(context, state, question).map((choice) => ({
          kind: 'choice' as const,
          id: choice.id,
          label: choice.label,
          ticked: state.ticked.includes(choice.id),
        }));
  const place = placeOf(context.interview, question.id);
  const always = [
    act('not-sure', words.notSure),
    ...(place === null ? [] : [act('later', words.later(placeWord[place]))]),
    act('help', words.help),
    act('back', words.back),
    act('stop', words.stop),
  ];
  const { dangers } = context.interview;
  const leaving = question.id === dangers.question && mustLeave(dangers, state.ticked);
  const started = state.answers['home-name'] !== undefined && !leaving;
  return started ? [...own, ...always, act('draft', words.draft)] : [...own, ...always];
}

/** A key too many must neither stop the sitting nor pass over the warning: the first line does nothing. */
function actNowRows({ interview: { dangers } }: Context, { at, ticked }: State): Row[] {
  const read = act('read', words.readFirst);
  const goOn = act('go-on', words.goOn);
  const stop = act('stop-now', words.stopNow);
  if (at !== dangers.question) return [read, goOn, stop];
  // Nothing here says to go on while somebody should be on the way out.
  if (mustLeave(dangers, ticked)) return [read, stop, act('back', words.isOver)];
  const tonight = offersTonight(dangers, ticked) ? [act('tonight', words.tonight)] : [];
  return canWait(dangers, ticked) ? [read, ...tonight, goOn, stop] : [read, stop, ...tonight, goOn];
}

/** Nothing open would change what to buy. */
function enoughRows(context: Context, state: State): Row[] {
  const { next } = state;
  const sharpen = next?.code === 'enough' ? next.sharpen : 0;
  return [
    act('write', words.seePlan),
    ...(sharpen === 0 ? [] : [act('rest', words.sharpen(sharpen))]),
    ...toWalk(context, state),
    act('draft', words.answersSoFar),
    act('stop', words.stop),
  ];
}

/** Where the opening ends. The short talk ends there too. */
function firstPlanRows({ short }: Context): Row[] {
  const more = short ? [] : [act('more', words.more)];
  return [
    ...more,
    act('write', words.writeFirst),
    act('draft', words.answersSoFar),
    act('stop', words.stop),
  ];
}

/** By topic, whatever the order they were asked in. */
function checkRows(context: Context, state: State): Row[] {
  const place = new Map(context.interview.topics.map(({ id }, i) => [id, i]));
  const byTopic = [...relevant(context, state.answers)].sort(
    (a, b) => place.get(a.topic)! - place.get(b.topic)!,
  );
  const rows: Row[] = byTopic.map((question) => ({
    kind: 'answer',
    id: question.id,
    label: question.says,
    said: sayAnswer(question, state.answers[question.id]),
  }));
  return [
    act('write', state.changing === null ? words.writePlan : words.toPlan),
    ...toWalk(context, state),
    ...rows,
    act('stop', words.stop),
  ];
}

/** The list for the walk, where anything stands on it. */
function toWalk(context: Context, { answers }: State): Row[] {
  const count = walkIds(context, answers).length;
  return count === 0 ? [] : [act('walk', words.walk(count))];
}

function walkRows(context: Context, { answers }: State): Row[] {
  const found = walkIds(context, answers).length > 0 ? [act('found', words.found)] : [];
  return [...found, act('draft', words.answersSoFar), act('stop', words.stop)];
}

function act(name: Act, label: string): Row {
  return { kind: 'act', act: name, label };
}
