import interview from '#compiled/questions.js';
import { knobsOf } from '../../src/interview/what-if/knobs';
import { quickPlans } from '../../src/plan/changes/quick-plan';
import { readHome } from '../../src/store/read-home';

/** A key of what if is followed by its figures within this, ms. */
const LIMIT_MS = 150;
const AS_OF = '2026-11-25';

/** Every place of every knob of the demo homes: processor time of its figures, once the view stands. */
export function benchWhatIf(): string[] {
  return ['mill-lane', 'birch-street', 'ridge-road', 'tower-six'].map((name) => {
    const read = readHome(`test/households/${name}.home.yaml`, interview);
    if (!read.ok) throw new Error(name);
    const { answers } = read;
    const factsOf = quickPlans(interview, AS_OF, false);
    factsOf({ answers, size: 0 });
    const times = knobsOf(interview, answers)
      .flatMap(({ places }) => places)
      .map(({ changes, size }) => {
        const began = process.cpuUsage();
        factsOf({ answers: { ...answers, ...changes }, size });
        const { user, system } = process.cpuUsage(began);
        return (user + system) / 1000;
      })
      .sort((a, b) => a - b);
    const at = (share: number) => Math.round(times[Math.floor(share * (times.length - 1))]!);
    const within = times.filter((ms) => ms <= LIMIT_MS).length;
    return `what if of ${name}: ${at(0.5)} ms of processor time at the middle, ${at(0.95)} ms for 95 of 100, ${at(1)} ms at most; ${within} of ${times.length} within ${LIMIT_MS} ms`;
  });
}
