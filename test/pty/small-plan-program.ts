import { writeFileSync } from 'node:fs';
import { readPlan } from '../../src/faces/screen/plan/read-plan';
import { whatIfKey } from '../../src/faces/screen/plan/what-if-view';
import { smallInterview } from '../faces/small-interview';
import { sittingAfterSitting } from './sitting-after-sitting';

// A plan with what if over it, for tests through a pseudo-terminal. Figures come late, as from a slow machine.
const SLOW_MS = 400;
const answers = { 'home-name': 'oak', 'goal-hours': 24 };
const markdown = [
  '# Backup power plan: oak',
  'A first page.',
  ...Array.from(
    { length: 12 },
    (_, i) => `## Part ${i + 1}\n\n${'Words of this part. '.repeat(30)}`,
  ),
].join('\n\n');

const { stdin, stdout } = process;
await sittingAfterSitting(async () => {
  const left = await readPlan({
    name: 'oak',
    markdown,
    stdin,
    stdout,
    beside: [
      whatIfKey({
        name: 'oak',
        interview: smallInterview,
        answers,
        stdout,
        apart: {
          look: (_, tried, found) => {
            const hours = String(tried.answers['goal-hours']);
            const row = { name: 'Price', before: '$100.', after: `$${hours}0.`, changed: true };
            const said = { rows: [row], come: [], go: [], nothing: null, basis: 'Made up.' };
            setTimeout(() => found(said), SLOW_MS);
          },
          close: () => {},
        },
      }),
    ],
  });
  writeFileSync('left.json', JSON.stringify(left));
  stdout.write(`Ended: ${typeof left === 'string' ? left : 'asked'}\n`);
});
