import { BaseSequencer } from 'vitest/node';

/** Rooms of tests that take long, those that take longest first; what is not named here follows. */
const LONG = ['test/soak/', 'test/pty/', 'test/commands/', 'test/plan/', 'test/papers/'];

/** Long test files are begun first, so that at the end no core waits for one of them. */
export class LongestFirst extends BaseSequencer {
  /** @param {import('vitest/node').TestSpecification[]} files */
  async sort(files) {
    const sorted = await super.sort(files);
    /** @param {import('vitest/node').TestSpecification} file */
    const rank = ({ moduleId }) => {
      const found = LONG.findIndex((room) => moduleId.includes(room));
      return found < 0 ? LONG.length : found;
    };
    return sorted.toSorted((a, b) => rank(a) - rank(b));
  }
}
