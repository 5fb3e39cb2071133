import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import { prettifyError, type z } from 'zod';
import type { Question } from '../interview/questions/question';
import { sharesFileSchema } from '../interview/questions/shares-schema';

/** Check `questions/shares.yaml` against the questions, and write it to `to` as one module, in shares of 1. */
export function compileShares(path: string, questions: readonly Shared[], to: string): void {
  const doc = parseDocument(readFileSync(path, 'utf8'), { uniqueKeys: true });
  if (doc.errors.length > 0) throw new Error(`${path}: ${doc.errors[0]!.message}`);
  const read = sharesFileSchema.safeParse(doc.toJS());
  if (!read.success) throw new Error(`${path}: ${prettifyError(read.error)}`);
  const rows = read.data;
  const wrong = [
    ...Object.keys(rows)
      .filter((id) => questions.every((one) => one.id !== id))
      .map((id) => `${id} is no question`),
    ...questions.flatMap((question) => faults(question, rows[question.id])),
  ];
  if (wrong.length > 0) throw new Error(`${path}: ${wrong.join('; ')}`);
  const shares = Object.fromEntries(
    Object.entries(rows).map(([id, { of = {}, unsure, often = [] }]) => [
      id,
      {
        of: Object.fromEntries(Object.entries(of).map(([c, n]) => [c, n / 100])),
        unsure: unsure / 100,
        often,
      },
    ]),
  );
  writeFileSync(join(to, 'answer-shares.js'), `export default ${JSON.stringify(shares)};\n`);
  writeFileSync(
    join(to, 'answer-shares.d.ts'),
    'declare const shares: Readonly<Record<string, { readonly of: Readonly<Record<string, number>>; readonly unsure: number; readonly often: readonly number[] }>>;\nexport default shares;\n',
  );
}

type Shared = Pick<Question, 'id' | 'kind' | 'choices' | 'possible'>;
type Row = z.infer<typeof sharesFileSchema>[string];

/** What the line of a question lacks or has too much; shares of a question with one answer sum to 100. */
function faults(
  { id, kind, choices = [], possible = [0, -1] }: Shared,
  row: Row | undefined,
): string[] {
  const outside = (row?.often ?? []).filter((one) => one < possible[0] || one > possible[1]);
  if (outside.length > 0) return [`${id} cannot be ${outside.join(', ')}`];
  if (choices.length === 0) return row?.of === undefined ? [] : [`${id} has no choices`];
  const shares = row?.of;
  if (row === undefined || shares === undefined)
    return [`${id} has choices and no shares: say how likely each is`];
  const ids = choices.map((one) => one.id);
  const missing = ids.filter((one) => shares[one] === undefined);
  const strange = Object.keys(shares).filter((one) => !ids.includes(one));
  const sum = row.unsure + Object.values(shares).reduce((a, b) => a + b, 0);
  return [
    ...missing.map((one) => `${id} lacks ${one}`),
    ...strange.map((one) => `${id} has no choice ${one}`),
    ...(kind === 'choice' && Math.abs(sum - 100) > 1e-9 ? [`${id} sums to ${sum}`] : []),
  ];
}
