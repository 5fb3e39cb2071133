import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import interview from '#compiled/questions.js';
import { homeFromFile } from '../../../src/commands/home-from-file';
import { tariffFromFile } from '../../../src/commands/own-tariff';
import { planPapers } from '../../../src/commands/plan-papers';
import { privateWords } from '../../../src/commands/private-words';
import { showDraft } from '../../../src/commands/talk/show-draft';
import { frameOf } from '../../../src/faces/screen/frame-of';
import { glyphsFor } from '../../../src/faces/screen/glyphs';
import type { Answers } from '../../../src/interview/answers';
import { begin } from '../../../src/interview/begin';
import { privateIn } from '../../../src/interview/private-answers';
import type { Unfinished } from '../../../src/interview/unfinished';
import { draftMaker } from '../../../src/plan/draft/draft-of';
import { makePlan } from '../../../src/plan/make-plan';
import { visible } from '../../../src/quantity/visible';
import { sayFault } from '../../../src/store/home-file';
import { signed } from '../../../src/store/write-papers';
import { english } from '../../../src/words/en';
import { seeded } from '../../fixtures/random-problem';
import { IN_MEMORY } from '../in-memory';
import { mutatedFile } from '../mutate-home';
import { BROKEN } from '../never/papers';
import { met, note, type Part, type Tally } from '../part';
import { demoHome, type Homes, poolHome } from '../pool-home';
import { PROGRAM } from '../through-terminal';

/** Longer than this is a hang, ms of the processor. */
const HANG_MS = 2000;
const MOST_MB = 512;
/** A file that takes so much more than was in use before it is the one to blame, MB. */
const TAKEN_MB = 100;
const YEARS = 2;
/** Of so many files that can be read one is planned, and of so many files one goes to the real program. */
const PLANNED = 4;
const REAL = 200;

const draftOf = draftMaker(interview);

/** Home files spoiled by somebody who knows their form: a plan or sentences, in time, and nothing a terminal obeys. */
export const files: Part = {
  whole: 20_000,
  of: 'file',
  try: (seed, tally) => tryFile(seed, tally, poolHome),
  light: (seed, tally) => tryFile(seed, tally, demoHome),
};

async function tryFile(seed: number, tally: Tally, knowsItself: Homes): Promise<void> {
  const random = seeded(seed ^ 0xf11e);
  const folder = mkdtempSync(join(IN_MEMORY, 'lampkeeper-soak-'));
  const path = join(folder, 'kim.home.yaml');
  try {
    writeFileSync(path, mutatedFile(seed, random, knowsItself));
    const before = process.memoryUsage.rss() / 1e6;
    const start = process.cpuUsage();
    const said = await saidOf(path, seed % PLANNED === 0);
    const ms = process.cpuUsage(start).user / 1000;
    met(tally, said.kind);
    const rss = process.memoryUsage.rss() / 1e6;
    note(tally, `file ${seed}`, 'a plan or sentences', [
      ...wrongIn(said.words),
      ...(ms > HANG_MS ? [`took ${Math.round(ms)} ms`] : []),
      ...(rss > MOST_MB && rss - before > TAKEN_MB ? [`${Math.round(rss)} MB in use`] : []),
    ]);
    if (seed % REAL === 0) note(tally, `file ${seed}`, 'the real program', realFaults(path));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Said {
  readonly kind: 'refused with sentences' | 'read' | 'read and planned';
  /** All that a person or a terminal would be shown. */
  readonly words: string;
}

async function saidOf(path: string, whole: boolean): Promise<Said> {
  const tariff = await tariffFromFile(path);
  const home = await homeFromFile(path, null);
  const about = tariff.ok ? '' : tariff.says;
  if (!home.ok) return { kind: 'refused with sentences', words: visible(`${home.says}\n${about}`) };
  const { answers, asOf, unfinished, remarks } = home;
  const words = [
    ...remarks.map((one) => sayFault(path, one)),
    ...privateWords(interview, privateIn(interview, answers), home.tariff !== null),
    about,
  ];
  const shown = [visible(words.join('\n')), screenOf(answers, unfinished, whole)];
  if (!whole) return { kind: 'read', words: shown.join('\n') };
  const plan = makePlan(interview, { ...answers, 'home-name': 'kim' }, asOf, YEARS, home.tariff);
  shown.push(...planPapers(plan, 'kim', english).map(signed));
  return { kind: 'read and planned', words: shown.join('\n') };
}

/** The first question and the list of answers, as on the screen, and now and then what they add up to. */
function screenOf(answers: Answers, unfinished: Unfinished, weighed: boolean): string {
  const context = { interview, short: false, nameProblem: () => null, spareName: () => 'kim' };
  const state = begin(context, answers, unfinished);
  const draft = weighed ? showDraft(draftOf(answers)) : null;
  const glyphs = glyphsFor({});
  const size = { columns: 120, rows: 40 };
  return [state, { ...state, view: 'check' as const }]
    .flatMap((one) => frameOf({ context, state: one, draft, size, glyphs }).lines)
    .map((line) => line.map((span) => span.text).join(''))
    .join('\n');
}

const CONTROL = /[\x00-\x09\x0b-\x1f\x7f-\x9f\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]/;

/** A number of the file itself, said back in quotes. */
const QUOTED = /"(-?Infinity|NaN)"/g;

function wrongIn(words: string): string[] {
  // A calendar ends its lines with both.
  const control = CONTROL.exec(words.replaceAll('\r\n', '\n'));
  const bad = BROKEN.exec(words.replace(QUOTED, ''));
  return [
    ...(words.trim() === '' ? ['nothing is said'] : []),
    ...(control === null ? [] : [`U+${control[0].codePointAt(0)!.toString(16)} is sent`]),
    ...(bad === null
      ? []
      : [`broken: ${words.slice(Math.max(0, bad.index - 60), bad.index + 30)}`]),
  ];
}

/** The built program over the same file, with no more memory than a small machine has. */
function realFaults(path: string): string[] {
  const flags = [`--max-old-space-size=${MOST_MB - 128}`];
  const ran = spawnSync(process.execPath, [...flags, PROGRAM, 'check', path], {
    encoding: 'utf8',
    timeout: 20_000,
  });
  return [
    ...([0, 1].includes(ran.status ?? -1) ? [] : [`left with ${ran.status ?? ran.signal}`]),
    ...(/fault in lampkeeper itself|\n {4}at /.test(ran.stderr) ? [ran.stderr.slice(0, 300)] : []),
    ...wrongIn(ran.stdout + ran.stderr),
  ];
}
