import type { Home } from '../../../home/home';
import type { Cure, StartLimit } from '../../../plan/electrical/starting';
import { loadName } from '../load-names';

/** Where the source gives way when a motor starts. */
export function sayStartLimit(limit: StartLimit): string {
  return limit.code === 'trips-above'
    ? `an inverter trips above ${Math.round(limit.va)} VA; it has no dip to ride through`
    : `${limit.percent} % dip, where many contactors let go; the maker's motor-start table decides`;
}

/** What makes the starts fit, to stand after a colon. */
export function sayCure(home: Pick<Home, 'loads'>, cure: Cure): string {
  switch (cure.code) {
    case 'none':
      return 'none needed';
    case 'none-one-by-one':
      return 'none needed while the branches are switched on one at a time';
    case 'keep-starts-apart':
      return 'a delay or control that lets one motor start at a time';
    case 'soft-starter':
      return softStarter(home, cure);
    case 'soft-starter-and-apart':
      return `${softStarter(home, cure)}, and a control that lets one motor start at a time`;
    case 'larger-source':
      return `a source that lends ${Math.ceil(cure.va / 100) / 10} kVA for a moment, or one motor fewer`;
  }
}

function softStarter(home: Pick<Home, 'loads'>, given: Extract<Cure, { usdLow: number }>): string {
  const on = given.on === null ? '' : ` on the ${loadName(home, given.on).toLowerCase()}`;
  return `a soft starter${on}, $${given.usdLow} to $${given.usdHigh} (${given.year})`;
}
