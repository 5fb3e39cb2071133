import { appendFileSync, existsSync, writeFileSync } from 'node:fs';
import { runScreen } from '../../src/faces/screen/run-screen';
import { begin } from '../../src/interview/begin';
import { draftSmall } from '../faces/draft-small';
import { smallInterview } from '../faces/small-interview';
import { sittingAfterSitting } from './sitting-after-sitting';

// A program around the screen face and the small interview, for tests through a pseudo-terminal.
const context = {
  interview: smallInterview,
  short: false,
  nameProblem: (name: string) => (name === 'taken' ? 'A home of that name is here already.' : null),
  spareName: () => 'home-1',
};

await sittingAfterSitting(async () => {
  const state = await runScreen({
    context,
    start: begin(context, {}),
    later: Promise.resolve({
      save(answers, unfinished) {
        if (existsSync('disk-is-full'))
          return 'The disk is full. Free some space; your answers are kept until then.';
        appendFileSync('saved.jsonl', `${JSON.stringify({ answers, unfinished })}\n`);
        return null;
      },
      draftOf(answers) {
        if (existsSync('sums-fail')) throw new Error('a fault in the sums');
        return draftSmall(answers);
      },
    }),
    color: process.env.FORCE_COLOR !== '0',
    stdin: process.stdin,
    stdout: process.stdout,
  });
  writeFileSync('state.json', JSON.stringify(state));
  process.stdout.write(`Ended: ${state.ending}\n`);
  process.exitCode = state.ending === 'interrupted' ? 130 : 0;
});
