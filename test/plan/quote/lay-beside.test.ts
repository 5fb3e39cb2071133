import { describe, expect, test } from 'vitest';
import { layBeside } from '../../../src/plan/quote/lay-beside';
import type { Quote, QuoteLine } from '../../../src/plan/quote/quote';
import { planOf } from '../../households/read-household';

const silent: Quote = {
  priceUsd: null,
  usableKwh: null,
  continuousWatts: null,
  startingVa: null,
  transfer: null,
  leavesOut: null,
  permitIncluded: null,
  licenseNamed: null,
  warrantyYears: null,
  weeks: null,
};

describe('a quote for something wired', () => {
  const plan = planOf('birch-street');
  const { power, costUsd } = plan.advice.route;
  const good: Quote = {
    priceUsd: costUsd.value,
    usableKwh: null,
    continuousWatts: Math.ceil(power!.runningWatts.high),
    startingVa: Math.ceil(power!.startDemandVa.high),
    transfer: 'interlock',
    leavesOut: [],
    permitIncluded: true,
    licenseNamed: true,
    warrantyYears: 3,
    weeks: 4,
  };
  const lay = (changed: Partial<Quote>) => layBeside(plan, { ...good, ...changed });
  const standing = (changed: Partial<Quote>, line: QuoteLine) =>
    lay(changed).lines.find((one) => one.line === line)!.standing;
  const codes = (changed: Partial<Quote>) => lay(changed).cautions.map(({ code }) => code);

  test('that gives all that was asked has ten lines and no caution', () => {
    expect(lay({}).lines).toHaveLength(10);
    expect(codes({})).toEqual([]);
    for (const { line, standing } of lay({}).lines)
      expect(standing, line).toBe(line === 'usableKwh' ? 'not-asked' : 'does');
  });

  test('that is silent is asked about every line, and warned of for what law and life hang on', () => {
    const laid = layBeside(plan, silent);
    for (const { line, standing } of laid.lines)
      expect(standing, line).toBe(line === 'usableKwh' ? 'not-asked' : 'silent');
    expect(laid.cautions.map(({ code }) => code)).toEqual(['no-transfer', 'no-permit']);
  });

  test('without a permit, a license or transfer equipment is warned of by the rule about it', () => {
    expect(lay({ permitIncluded: false }).cautions).toEqual([
      { code: 'no-permit', rule: 'panel-work-licensed' },
    ]);
    expect(codes({ licenseNamed: false })).toEqual(['no-license']);
    expect(lay({ transfer: 'none' }).cautions).toEqual([
      { code: 'no-transfer', rule: 'no-backfeed' },
    ]);
  });

  test('is held against the plan by its three figures', () => {
    const { low, value, high } = power!.startDemandVa;
    expect(standing({ startingVa: high }, 'startingVa')).toBe('does');
    expect(standing({ startingVa: value }, 'startingVa')).toBe('likely-only');
    expect(standing({ startingVa: low }, 'startingVa')).toBe('less');
    expect(codes({ startingVa: low })).toEqual(['too-weak-to-start']);
    expect(standing({ priceUsd: costUsd.high + 1 }, 'priceUsd')).toBe('over');
    expect(standing({ priceUsd: costUsd.low - 1 }, 'priceUsd')).toBe('under');
  });

  test('that leaves out what must run says so, and what is good to have is a choice', () => {
    expect(codes({ leavesOut: ['sump'] })).toEqual(['leaves-out-must']);
    expect(codes({ leavesOut: ['microwave'] })).toEqual([]);
  });
});

describe('a quote for a pack with a device on it', () => {
  const plan = planOf('tower-six');

  test('asks for no permit and no transfer equipment', () => {
    const laid = layBeside(plan, silent);
    expect(laid.cautions).toEqual([]);
    for (const line of ['transfer', 'permitIncluded', 'licenseNamed'] as const)
      expect(laid.lines.find((one) => one.line === line)!.standing).toBe('not-asked');
  });

  test('that leaves the device out is warned of first', () => {
    const device = plan.home.loads.find(({ restsOn }) => restsOn.includes('medical-devices'))!;
    const [first] = layBeside(plan, { ...silent, leavesOut: [device.id] }).cautions;
    expect(first).toEqual({ code: 'leaves-out-device', rule: 'second-source' });
  });
});
