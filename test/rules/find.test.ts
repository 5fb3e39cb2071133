import { describe, expect, it } from 'vitest';
import { findings } from '../../src/rules/find';
import { english } from '../../src/words/en';
import { sayRule } from '../../src/words/rule-sentences';
import { knownOf, someHome } from './some-home';

const idsOf = (home: ReturnType<typeof someHome>, kinds: Parameters<typeof findings>[1] = []) =>
  findings(home, kinds).map((one) => one.id);

describe('findings', () => {
  it('come most severe first', () => {
    const home = someHome(knownOf({ 'own-sources': ['engine-portable'], 'fridge-count': 1 }));
    const severities = findings(home, ['engine-inlet']).map((one) => one.severity);
    expect(severities).toEqual([...severities].sort((a, b) => b - a));
    expect(severities[0]).toBe(5);
  });

  it('are the same for the same home and routes, whatever the order of the routes', () => {
    const home = someHome(knownOf({ 'own-sources': ['engine-portable', 'solar'] }));
    expect(findings(home, ['engine-inlet', 'battery-whole'])).toEqual(
      findings(home, ['battery-whole', 'engine-inlet']),
    );
  });

  it('say whether the household told us or we took the safe side', () => {
    const asked = someHome(knownOf({ 'own-sources': ['engine-portable'] }));
    const unasked = someHome(knownOf({}, { 'own-sources': null }));
    const distance = (home: typeof asked) =>
      findings(home, []).find((one) => one.id === 'co-distance');
    expect(distance(asked)?.careful).toBe(false);
    expect(distance(unasked)?.careful).toBe(true);
  });

  it('claim nothing of a home that nobody told', () => {
    const says = (told: Parameters<typeof knownOf>[0], open: Parameters<typeof knownOf>[1]) =>
      new Map(
        findings(someHome(knownOf(told, open)), ['engine-cords']).map((f) => [
          f.id,
          sayRule(english.rules, f),
        ]),
      );
    const open = says({}, { 'outage-longest': null, 'engine-connect': null, 'engine-place': null });
    const told = says(
      { 'outage-longest': 200, 'engine-connect': 'wall-outlet', 'engine-place': 'open-closer' },
      {},
    );
    expect(told.get('outlasts-plan')).toContain('has been out here for longer');
    expect(open.get('outlasts-plan')).not.toContain('has been out here');
    for (const id of ['outlasts-plan', 'backfeed-found', 'engine-too-close'] as const) {
      expect(open.get(id), id).toBeDefined();
      expect(open.get(id), id).not.toBe(told.get(id));
    }
  });

  it('print the gravest cautions when nothing was asked', () => {
    const open = {
      'now-danger': null,
      'medical-devices': null,
      'own-sources': null,
      'heat-second': 'none',
      'cook-without': null,
      'co-alarm': 'none',
      'engine-place': 'none',
      'panel-signs': null,
    };
    expect(idsOf(someHome(knownOf({}, open)))).toEqual(
      expect.arrayContaining([
        'no-backfeed',
        'co-distance',
        'porch-carport',
        'fixed-engine-exhaust',
        'co-alarm-first',
        'hybrid-starts-itself',
        'oven-heat',
        'charcoal-indoors',
        'second-source',
        'leaving-point',
        'hot-panel',
      ]),
    );
  });

  it('say nothing medical once it is clear that nobody has a device', () => {
    const ids = idsOf(someHome(knownOf({ 'medical-devices': ['none'], 'own-sources': ['none'] })));
    for (const id of ['second-source', 'leaving-point', 'list-is-notice']) {
      expect(ids).not.toContain(id);
    }
  });

  it('work out the leaving point as three trips plus two hours', () => {
    const home = someHome(knownOf({ 'medical-devices': ['ventilator'], 'trip-hours': 1.5 }));
    const leave = findings(home, []).find((one) => one.id === 'leaving-point');
    expect(leave?.because).toMatchObject({ code: 'leave-in-hand', leaveHours: 3 * 1.5 + 2 });
  });
});
