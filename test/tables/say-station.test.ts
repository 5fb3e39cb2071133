import { expect, test } from 'vitest';
import { sayStation } from '../../src/tables/say-station';

test.each([
  ['Elkins Elkins-randolph CO Arp', 'Elkins Elkins-Randolph County Airport'],
  ['Staunton/shenandoah', 'Staunton/Shenandoah'],
  ['Anchorage Intl AP', 'Anchorage International Airport'],
  ['Adak Nas', 'Adak Naval Air Station'],
  ['Cedar City Municipal AP [isis]', 'Cedar City Municipal Airport'],
  ['Atlantic (awos)', 'Atlantic'],
])('%s is written %s', (listed, said) => {
  expect(sayStation(listed)).toBe(said);
});
