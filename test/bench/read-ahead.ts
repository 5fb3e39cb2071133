import { talkAhead, talkHomes } from './talk';

const LIMIT_MS = 400;

/**
 * From an answer until the sums beside the question and the next question are there, worked out ahead while each is read and its
 * answer given: processor time by home, the opening left out. Every pause of the talk is worked through, so it takes minutes.
 */
export function benchReadAhead(): string[] {
  const all: number[] = [];
  const lines = [...talkHomes('test')].map(([name, home]) => {
    const found = talkAhead(home).sort((a, b) => a - b);
    all.push(...found);
    return `  ${name.padEnd(13)} ${says(found)}`;
  });
  all.sort((a, b) => a - b);
  return [...lines, `sums and next question: ${says(all)} (aim ${LIMIT_MS} for 95)`];
}

function says(sorted: readonly number[]): string {
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))]!.toFixed(0);
  const above = sorted.filter((ms) => ms > LIMIT_MS).length;
  return `${at(0.5)} ms at the middle, ${at(0.95)} ms for 95 of 100, ${at(1)} ms at most, ${above} of ${sorted.length} above ${LIMIT_MS}`;
}
