import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { PACK_IDLE_WATTS, packIdleWatts, packOnShare } from '../../../src/home/loads/pack-idle';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { packHours } from '../../../src/routes/kinds/packs';
import { answersOf } from '../../households/read-household';

const { loads, ...rest } = homeFromAnswers(
  interview,
  { ...answersOf('tower-six'), 'internet-kind': 'cable-fiber' },
  '2026-11-25',
);
const home = { ...rest, loads };
const named = (...ids: string[]) => loads.filter((load) => ids.includes(load.id));

test('for phones alone a pack is on only while they charge; beside a router it never sleeps', () => {
  // Three hours of charging a day, the likely value of the table.
  expect(packOnShare(named('phone-charging'), 'winter').inverter).toBeCloseTo(3 / 24, 6);
  expect(packIdleWatts(named('phone-charging'), 'winter')).toBeCloseTo(PACK_IDLE_WATTS / 8, 6);
  expect(packIdleWatts(named('phone-charging', 'modem-router'), 'winter')).toBe(PACK_IDLE_WATTS);
});

test('the likely hours count it off between uses, the careful ones left on day and night', () => {
  const phones = named('phone-charging');
  const { value, low } = packHours(home, phones, 0.9);
  const kwh = phones[0]!.kwhPerDay.winter;
  // 0.9 kWh over a day's charging and 0.36 kWh of idling is 2 days; at an eighth of the idling it is far longer.
  expect(low).toBeLessThan((24 * 0.9) / 0.36);
  expect(value).toBeGreaterThan((24 * 0.9) / (kwh.value + 0.36));
  expect(value).toBeGreaterThan(7 * 24);
});
