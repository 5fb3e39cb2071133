import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { secondRank } from '../../src/advice/could-forbid';
import { stopKindOf, stopKinds } from '../../src/routes/stops/stop-codes';

/** Named by a reason that closes a route, and no safety question of the second rank, because: */
const others: Readonly<Record<string, string>> = {
  'home-kind': 'stands in the opening',
  'must-run': 'stands in the opening',
  'gas-supply': 'without gas there is nothing to burn: it harms nobody',
  'roof-face': 'without a roof there is nowhere to put panels: it harms nobody',
  'roof-area': 'the same',
  'own-sources': 'a vehicle that is not there harms nobody',
  'vehicle-watts': 'an outlet too small carries nothing',
  'engine-fuel': 'a label nobody read: the generator stays closed, and what it burns is no danger',
  'battery-kwh': 'a battery too weak carries nothing',
  'battery-kw': 'the same',
};

test('every question that closes a route is on the list of safety questions, or has a reason why not', () => {
  const asked = new Set(
    Object.keys(stopKinds).flatMap((code) => stopKindOf(code as keyof typeof stopKinds).asks),
  );
  const known: string[] = [...secondRank, ...Object.keys(others)];
  expect([...asked].sort()).toEqual([...new Set(known)].sort());
  for (const id of ['home-kind', 'must-run']) expect(interview.opening).toContain(id);
});
