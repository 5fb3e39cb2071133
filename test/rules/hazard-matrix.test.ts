import { describe, expect, it } from 'vitest';
import { rules } from '../../src/rules';
import { findings } from '../../src/rules/find';
import { allPairs } from './all-pairs';
import { calmHome } from './calm-home';
import type { Pair } from './pairs';
import { answeredHome } from './some-home';

function shows({ rule, hazard, kinds, site }: Pair): boolean {
  const home = answeredHome({ ...calmHome, ...hazard }, site);
  return findings(home, kinds).some((one) => one.id === rule);
}

const twinOf = (one: Pair): Pair => ({
  ...one,
  hazard: one.twin,
  kinds: one.twinKinds,
  site: one.twinSite,
});

describe('a caution shows where its hazard is, and not on the twin without it', () => {
  it.each(allPairs.map((one, row) => ({ ...one, row })))('$rule (row $row)', (one) => {
    expect(shows(one), 'the home with the hazard').toBe(true);
    expect(shows(twinOf(one)), 'its twin without').toBe(false);
  });

  it('covers every rule', () => {
    const covered = new Set(allPairs.map((one) => one.rule));
    expect(
      rules.map((rule) => rule.id).filter((id) => !covered.has(id)),
      'Add a pair to test/rules/pairs-*.ts: a home with the hazard, and its twin without',
    ).toEqual([]);
  });

  it('leaves the calm home almost alone', () => {
    const home = answeredHome(calmHome);
    expect(home.facts.openIds()).toEqual([]);
    expect(findings(home, ['preparation']).map((one) => one.id)).toEqual(['wood-fire']);
  });
});
