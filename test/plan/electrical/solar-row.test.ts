import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { relevant } from '../../../src/interview/questions/relevant';
import { scopeOf } from '../../../src/plan/electrical/scope';
import { solarRowPoints } from '../../../src/plan/electrical/solar-row-points';
import type { Route } from '../../../src/routes/route';
import { transferTime } from '../../../src/routes/transfer-time';
import { sayQuotePoint } from '../../../src/words/en/electrical/say-scope';
import { saySolarRow } from '../../../src/words/en/electrical/say-solar-row';
import { answersWith, houseWith } from './electrical-home';

const on = (kind: Route['kind']) => ({ kind }) as Route;
const saidOf = (home: ReturnType<typeof houseWith>, kind: Route['kind']) =>
  solarRowPoints(home, on(kind)).map(saySolarRow);
const pack = { 'own-sources': ['power-pack'], 'solar-row': 3, 'solar-limit': 60 };

describe('solar panels in a row, at the record low of the home', () => {
  // Lansing, Michigan: a record low near -35 °C, where Table 690.7(A) has 1.23 to 1.25.
  test('gives the most volts a label may show, and calls a row too long that no usual panel fits', () => {
    const [row, amps] = saidOf(houseWith(pack), 'power-pack');
    const most = Number(/may show ([\d.]+) V/.exec(row!)![1]);
    expect(most).toBeGreaterThanOrEqual(Math.floor((60 / 3 / 1.27) * 10) / 10);
    expect(most).toBeLessThanOrEqual(60 / 3 / 1.21);
    expect(row).toContain('too long');
    expect(amps).toContain('690.8');
    const two = saidOf(houseWith({ ...pack, 'solar-row': 2 }), 'power-pack')[0];
    expect(two).not.toContain('too long');
  });

  test('never judges while a number is missing, and says nothing where there is no row', () => {
    const open = houseWith({ ...pack, 'solar-limit': 'not sure' });
    expect(saidOf(open, 'power-pack')[0]).toContain('Multiply the Voc');
    expect(solarRowPoints(houseWith({ ...pack, 'solar-row': 0 }), on('power-pack'))).toEqual([]);
    expect(solarRowPoints(houseWith(), on('power-pack'))).toEqual([]);
    expect(saidOf(houseWith(), 'battery-solar')[0]).toContain('New solar');
  });

  test('is asked of whoever quotes a wired route of a home with solar', () => {
    const points = (changed: Record<string, string[] | number>) =>
      scopeOf(houseWith(changed), {
        ...on('battery-circuits'),
        title: 'Battery',
        power: null,
        transferTime: transferTime('by-itself'),
        usableKwh: null,
        solarKw: null,
        carries: [] as readonly string[],
        parts: [] as Route['parts'],
        costUsd: { high: 1 },
      } as unknown as Route).quotePoints.map(sayQuotePoint);
    expect(points({ 'own-sources': ['solar'] }).join(' ')).toContain('690.8');
    expect(points({}).join(' ')).not.toContain('690.8');
  });

  test('is asked only of a home with solar or a power pack, and the limit only with a row', () => {
    const asked = (changed: Record<string, unknown>) =>
      relevant(
        { interview, short: false, nameProblem: () => null, spareName: () => null } as never,
        answersWith(changed as never),
      ).map((q) => q.id);
    expect(asked({ 'own-sources': ['none'] })).not.toContain('solar-row');
    expect(asked({ 'own-sources': ['engine-portable'] })).not.toContain('solar-row');
    expect(asked({ 'own-sources': ['solar'] })).toContain('solar-row');
    expect(asked({ 'own-sources': ['power-pack'] })).toContain('solar-row');
    expect(asked({ ...pack, 'solar-row': 0 })).not.toContain('solar-limit');
    expect(asked(pack)).toContain('solar-limit');
  });
});
