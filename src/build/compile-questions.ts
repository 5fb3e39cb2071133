import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import { prettifyError, type ZodType } from 'zod';
import type { Dangers } from '../interview/dangers';
import type { Question } from '../interview/questions/question';
import {
  dangersFileSchema,
  orderFileSchema,
  questionFileSchema,
  tonightFileSchema,
  walkFileSchema,
} from '../interview/questions/question-schema';

import { MEASURED, measuredFileSchema, measuredQuestions } from './measured-questions';

/** Check every question file under `from`, write the interview to `to` as one module, and hand back its questions. */
export function compileQuestions(from: string, to: string): Question[] {
  const order = read(join(from, 'order.yaml'), orderFileSchema);
  const seen: string[] = [];
  const measured = measuredQuestions(
    read(join(from, 'measured-things.yaml'), measuredFileSchema),
    read(join(from, MEASURED, `${MEASURED}.yaml`), questionFileSchema),
  );
  const places = order.topics.flatMap((topic) =>
    topic.questions
      .flatMap((id) => (id === MEASURED ? [id, ...measured.keys()] : [id]))
      .map((id) => ({ topic: topic.id, id })),
  );
  const opening = order.opening.map((id) => {
    const place = places.find((one) => one.id === id);
    if (place === undefined)
      throw new Error(`order.yaml: opening names ${id}, which is no question`);
    return place;
  });
  const rest = places.filter(({ id }) => !order.opening.includes(id));
  const questions = [...opening, ...rest].map(({ topic, id }) => {
    const path = join(from, topic, `${id}.yaml`);
    const made = measured.get(id);
    if (made === undefined && !existsSync(path))
      throw new Error(`${path} is named in order.yaml but missing: write it, or take its id out`);
    const held =
      made === undefined
        ? read(path, questionFileSchema)
        : checked(`measured-things.yaml, ${id}`, made, questionFileSchema);
    const question = { id, topic, ...held };
    for (const earlier of conditionsOf(question.when)) {
      if (!seen.includes(earlier))
        throw new Error(
          `${path}: ${earlier} is not asked before: a "when" may only name earlier questions; check its spelling, or move one of the two in order.yaml`,
        );
    }
    seen.push(id);
    return question;
  });
  // A choice may wait for what is asked later: until then it is offered as if that were "not sure".
  for (const { id, choices } of questions) {
    const strange = conditionsOf(choices).filter((one) => !seen.includes(one));
    if (strange.length > 0)
      throw new Error(`${id}: a choice names ${strange.join(', ')}, which is no question`);
  }
  checkMeasured([...measured.keys()], questions);
  refuseStrays(from, order.topics);
  for (const list of ['mattersMost', 'tariff'] as const) {
    for (const id of order[list]) {
      if (!seen.includes(id))
        throw new Error(`order.yaml: ${list} names ${id}, which is no question`);
    }
  }
  for (const id of order.retired) {
    if (seen.includes(id)) throw new Error(`order.yaml: retired names ${id}, which is still asked`);
  }
  for (const [id, opens] of Object.entries(order.readBack)) {
    const choices = questions.find((one) => one.id === id)?.choices?.map((one) => one.id) ?? [];
    const strange = opens.filter((choice) => !choices.includes(choice));
    if (strange.length > 0)
      throw new Error(`order.yaml: readBack names ${id} ${strange.join(', ')}`);
  }
  const dangers = read(join(from, 'dangers.yaml'), dangersFileSchema) as Dangers;
  checkDangers(dangers, questions);
  const walk = read(join(from, '..', 'walk.yaml'), walkFileSchema);
  checkWalk(Object.values(walk).flat(), questions);
  const tonight = read(join(from, 'tonight.yaml'), tonightFileSchema).parts;
  const topics = order.topics.map(({ id, title }) => ({ id, title }));
  mkdirSync(to, { recursive: true });
  const text = JSON.stringify({
    topics,
    questions,
    dangers,
    tonight,
    walk,
    opening: order.opening,
    readBack: order.readBack,
    private: privateIds(order.private, questions),
    sureOf: order.sureOf,
    medicalWords: order.medicalWords,
    street: order.street,
    mattersMost: order.mattersMost,
    tariff: order.tariff,
    retired: order.retired,
  });
  writeFileSync(join(to, 'questions.js'), `export default JSON.parse(${JSON.stringify(text)});\n`);
  writeFileSync(
    join(to, 'questions.d.ts'),
    "import type { Interview } from '../../src/interview/questions/question';\ndeclare const interview: Interview;\nexport default interview;\n",
  );
  writeFileSync(join(to, 'question-ids.d.ts'), idTypes(questions));
  return questions as Question[];
}

/** Questions named, or all of the topics named, by kind. */
function privateIds(
  kinds: Readonly<Record<string, readonly string[]>>,
  questions: readonly { id: string; topic: string }[],
): Record<string, string[]> {
  const idsOf = (name: string) => {
    const ids = questions.filter(({ id, topic }) => id === name || topic === name);
    if (ids.length === 0) throw new Error(`order.yaml: private names ${name}, which is nothing`);
    return ids.map(({ id }) => id);
  };
  return Object.fromEntries(
    Object.entries(kinds).map(([kind, names]) => [kind, names.flatMap(idsOf)]),
  );
}

/** The ids of all questions, and of the choices of each, as types: a misspelt one does not compile. */
function idTypes(
  questions: readonly { id: string; choices?: readonly { id: string }[] }[],
): string {
  const rows = questions.map(({ id, choices = [] }) => {
    const ids = choices.map((choice) => `'${choice.id}'`).join(' | ');
    return `  '${id}': ${ids || 'never'};`;
  });
  return `export interface ChoicesOf {\n${rows.join('\n')}\n}\nexport type QuestionId = keyof ChoicesOf;\nexport type ChoiceId<Q extends QuestionId> = ChoicesOf[Q];\n`;
}

function read<T>(path: string, schema: ZodType<T>): T {
  const doc = parseDocument(readFileSync(path, 'utf8'), { uniqueKeys: true });
  if (doc.errors.length > 0) throw new Error(`${path}: ${doc.errors[0]!.message}`);
  return checked(path, doc.toJS(), schema);
}

function checked<T>(path: string, held: unknown, schema: ZodType<T>): T {
  const result = schema.safeParse(held);
  if (!result.success) throw new Error(`${path}: ${prettifyError(result.error)}`);
  return result.data;
}

/** Each thing that may be measured is a choice, and each choice such a thing. */
function checkMeasured(
  ids: readonly string[],
  questions: readonly { id: string; choices?: readonly { id: string; alone?: boolean }[] }[],
): void {
  const choices = questions.find(({ id }) => id === MEASURED)?.choices ?? [];
  const offered = choices.filter(({ alone }) => alone !== true).map(({ id }) => id);
  const asked = ids
    .filter((id) => !/-(start|day)$/.test(id))
    .map((id) => id.slice(MEASURED.length + 1));
  const wrong = [
    ...offered.filter((id) => !asked.includes(id)).map((id) => `${id} has no row`),
    ...asked.filter((id) => !offered.includes(id)).map((id) => `${id} is no choice of ${MEASURED}`),
  ];
  if (wrong.length > 0) throw new Error(`measured-things.yaml: ${wrong.join('; ')}`);
}

/** Each danger is a choice of its question and the other way round; no name leads nowhere; no two ranks are equal. */
function checkDangers(
  { question, dangers, steps }: Dangers,
  questions: readonly {
    id: string;
    choices?: readonly { id: string; alone?: boolean | undefined }[] | undefined;
  }[],
): void {
  const choices = questions.find((one) => one.id === question)?.choices ?? [];
  const offered = choices.filter((one) => one.alone !== true).map((one) => one.id);
  const ids = dangers.map((one) => one.id);
  const known = new Set(steps.map((one) => one.id));
  const used = new Set(dangers.flatMap((one) => one.steps));
  const wrong = [
    ...offered.filter((id) => !ids.includes(id)).map((id) => `${id} has no row`),
    ...ids.filter((id) => !offered.includes(id)).map((id) => `${id} is no choice of ${question}`),
    ...[...used].filter((id) => !known.has(id)).map((id) => `step ${id} is not there`),
    ...[...known].filter((id) => !used.has(id)).map((id) => `step ${id} is never used`),
    ...steps
      .flatMap((one) => [...(one.with ?? []), ...(one.without ?? [])])
      .filter((id) => !ids.includes(id))
      .map((id) => `${id} is no danger`),
    ...(new Set(dangers.map((one) => one.rank)).size < ids.length ? ['two ranks are equal'] : []),
  ];
  if (wrong.length > 0) throw new Error(`dangers.yaml: ${wrong.join('; ')}`);
}

/** Each id is a question, and stands at one place; what is read off a label stands at one. */
function checkWalk(
  ids: readonly string[],
  questions: readonly { id: string; nameplate?: boolean | undefined }[],
): void {
  const wrong = [
    ...ids
      .filter((id) => questions.every((one) => one.id !== id))
      .map((id) => `${id} is no question`),
    ...ids.filter((id, i) => ids.indexOf(id) < i).map((id) => `${id} stands twice`),
    ...questions
      .filter(({ id, nameplate }) => nameplate === true && !ids.includes(id))
      .map(({ id }) => `${id} is read off a label and stands nowhere`),
  ];
  if (wrong.length > 0) throw new Error(`walk.yaml: ${wrong.join('; ')}`);
}

/** Ids that the conditions of a question or its choices refer to. */
function conditionsOf(node: unknown): string[] {
  if (Array.isArray(node)) return node.flatMap(conditionsOf);
  if (node === null || typeof node !== 'object') return [];
  const { q, ...rest } = node as Record<string, unknown>;
  const here = typeof q === 'string' ? [q] : [];
  return [...here, ...Object.values(rest).flatMap(conditionsOf)];
}

function refuseStrays(from: string, topics: { id: string; questions: string[] }[]): void {
  for (const entry of readdirSync(from, { withFileTypes: true })) {
    if (!entry.isDirectory()) continue;
    const topic = topics.find((t) => t.id === entry.name);
    for (const file of readdirSync(join(from, entry.name))) {
      if (!topic?.questions.includes(file.replace(/\.yaml$/, ''))) {
        throw new Error(
          `${join(from, entry.name, file)} is not named in order.yaml: put its id under the topic of its folder, where it is to be asked`,
        );
      }
    }
  }
}
