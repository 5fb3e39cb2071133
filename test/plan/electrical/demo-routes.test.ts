import { describe, expect, test } from 'vitest';
import { electricalLines } from '../../../src/papers/household/details/say-electrical';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { electricalOf } from '../../../src/plan/electrical/electrical';
import type { Plan } from '../../../src/plan/plan';
import { electricianPoints } from '../../../src/plan/steps/electrician-points';
import type { Route } from '../../../src/routes/route';
import { findings } from '../../../src/rules/find';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

const routeOf = (plan: Plan, kind: Route['kind']) => plan.routes.find((r) => r.kind === kind)!;
const electricalBy = (plan: Plan, kind: Route['kind']) =>
  electricalOf(plan.home, {}, { route: routeOf(plan, kind), routes: plan.routes });

const ridge = planOf('ridge-road');

describe('the electrical half of a demo home', () => {
  test('sizes a 50 A inlet as 6 AWG copper in NM cable and 8 AWG on marked terminals', () => {
    // NEC 334.80 and 110.14(C)(1)(a); Table 310.16: 6 AWG copper 55 A at 60 C, 8 AWG copper 50 A at 75 C.
    const inlet = electricalBy(ridge, 'engine-inlet').wires.find(
      ({ run }) => run === 'inlet-to-panel',
    )!;
    expect(inlet.breakerAmps).toBe(50);
    const copper = (columnC: number) =>
      inlet.sizes.find((s) => s.metal === 'copper' && s.columnC === columnC)!.size;
    expect(copper(60)).toBe('6');
    expect(copper(75)).toBe('8');
  });

  test('makes the wire of a deep well thicker than its breaker asks, by the drop', () => {
    const pump = ridge.electrical.wires.find(({ run }) => run === 'panel-to-pump')!;
    expect(pump.sizes.every((size) => size.because === 'voltage-drop')).toBe(true);
    expect(Math.max(...pump.sizes.map((size) => size.dropPercent!))).toBeLessThanOrEqual(3);
  });

  test('counts the largest start with the next, and all that start by themselves after a transfer', () => {
    for (const start of ridge.electrical.starting) {
      expect(start.allAtOnceVa).toBeGreaterThanOrEqual(0);
      if (start.starting.length < 2) continue;
      expect(start.peakVa).toBeGreaterThan(0);
      expect(start.order[0]).toBe(start.starting[0]);
    }
    expect(ridge.electrical.starting.some((start) => start.starting.length === 2)).toBe(true);
  });

  test('gives one hardest start for a route: its size, its starting and its electrician have the same kVA', () => {
    for (const start of ridge.electrical.starting) {
      const need = routeOf(ridge, start.route).power!.startDemandVa;
      const inverter = start.dipPercent === null;
      expect(start.peakVa, start.route).toBeCloseTo(inverter ? need.high : need.value, 6);
    }
  });

  test('names each kVA of the hardest start by what it is', () => {
    const route = routeOf(ridge, 'battery-whole');
    const plan = { ...ridge, advice: { ...ridge.advice, route } };
    const line = electricalLines(plan, english).find((one) => one.startsWith('Hardest start'))!;
    const words = [/ kVA likely/, / kVA at the high end/, /when power comes back: [\d.]+ kVA/];
    for (const word of [...words, /the source lends for a moment: [\d.]+ kVA/]) {
      expect(line).toMatch(word);
    }
    expect(line.match(/ kVA/g)).toHaveLength(4);
  });

  test('gives the electrician the order for the transfer whole', () => {
    const route = routeOf(ridge, 'engine-inlet');
    const points = electricianPoints(ridge.home, route, findings(ridge.home, ['engine-inlet'])).map(
      (point) => english.forElectrician.point(ridge.home, point),
    );
    const order = points.find((one) => one.startsWith('Use the same order'))!;
    expect(order).toContain('The main must be off before');
    expect(order).toContain('To go back');
  });

  test('states a dip for an engine and a trip limit for an inverter, never the other way', () => {
    for (const start of ridge.electrical.starting) {
      const inverter = start.route.startsWith('battery') || start.route === 'power-pack';
      expect(start.dipPercent === null, start.route).toBe(
        inverter || start.route === 'vehicle' || start.route === 'single-battery',
      );
      expect(start.limit.code).toBe(start.dipPercent === null ? 'trips-above' : 'dip');
    }
  });

  test('compares eight ways to connect, with the capacity rule in numbers', () => {
    const { connections } = electricalBy(ridge, 'standby-engine');
    expect(connections).toHaveLength(8);
    const whole = connections.find((c) => c.way === 'automatic-whole-house')!;
    expect(english.forElectrician.capacity(whole.capacity)).toMatch(
      /kVA for a calculated .* kVA: .*702\.4\(A\)\(2\)\(a\)/,
    );
  });

  test('asks an apartment to leave every wired way alone', () => {
    const ways = planOf('tower-six').electrical.connections;
    expect(ways.filter((way) => way.fits !== 'no').map((way) => way.way)).toEqual(['cords']);
  });

  test('places a battery with its distances, detector and limits', () => {
    const plan = planOf('ridge-road', { 'battery-place': 'attached-garage' });
    const says = electricalBy(plan, 'battery-circuits')
      .siting.map(english.forElectrician.siting)
      .join(' ');
    for (const words of ['36 in', '48 in', 'heat detector', 'UL 9540', 'below 32 °F'])
      expect(says).toContain(words);
  });

  test('names standards and sections to the electrician, and no maker', () => {
    const { scope } = electricalBy(ridge, 'battery-circuits');
    expect(scope.requirements.map(english.forElectrician.requirement).join(' ')).toMatch(
      /UL 9540.*UL 1973.*UL 1741/,
    );
    expect(scope.circuits.length).toBe(routeOf(ridge, 'battery-circuits').carries.length);
    expect(english.forElectrician.confirmLocally).toContain('permit');
  });

  test('puts answers that do not fit together before everything else', () => {
    const text = planMarkdown(planOf('ridge-road', { 'panel-bus': 125 }), english);
    expect(text.indexOf('Settle these first')).toBeGreaterThan(0);
    expect(text.indexOf('Settle these first')).toBeLessThan(text.indexOf('## The job'));
  });

  test('holds a metered peak against the main, never better than marginal from a website, and refuses it with solar', () => {
    const metered = planOf('ridge-road', { 'bill-peak-kw': 9.6 }).electrical.metered;
    if (metered.kind !== 'done') throw new Error(metered.why);
    // NEC 220.87: 1.25 x 9.6 kVA / 240 V = 50 A, before what the advised route adds.
    expect(metered.amps).toBeGreaterThanOrEqual((1.25 * 9600) / 240 - 1e-9);
    expect(metered.verdict).toBe('marginal');
    expect(english.forElectrician.metered(metered)).toContain('electrician and inspector decide');
    const sunny = planOf('ridge-road', { 'bill-peak-kw': 9.6, 'own-sources': ['solar'] });
    expect(sunny.electrical.metered.kind).toBe('refused');
  });
});
