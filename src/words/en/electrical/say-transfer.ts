import type { Home } from '../../../home/home';
import type { PlainTransferPoint, TransferPoint } from '../../../plan/electrical/transfer-point';
import { shown } from '../../../quantity/shown';
import { loadName } from '../load-names';
import { sayTransferTime } from '../say-transfer-time';

const plain: Readonly<Record<PlainTransferPoint, string>> = {
  'no-curve-for-medical':
    'No electronics curve is applied to a medical device: its maker and supplier say what gap it stands, or it gets a source without a break.',
  'one-bond':
    'One neutral-to-ground bond in all: at the service when the neutral stays solid; at the source, as a separately derived system, when the transfer switch switches the neutral (250.30).',
  'bonded-trips-gfci':
    'A portable generator with a bonded neutral and GFCI outlets trips behind a solid neutral: then the transfer switches the neutral, or an electrician sets the generator to floating as its maker allows.',
  'generator-neutral-not-known':
    'The neutral of the generator is not known: it feeds no house wiring until an electrician has found out.',
  'flame-needs-bond':
    'The furnace or boiler proves its flame by a current to ground: with a floating neutral it may lock out. A bonded neutral on the source cures it.',
  'source-120-for-240': 'A source of 120 V cannot run the 240 V loads named, however strong it is.',
  'one-120-on-both-legs':
    'One 120 V source on both legs adds the currents in every shared neutral instead of taking them off: circuits that share a neutral must be found and kept off it.',
  'neutral-loaded-at-208':
    'At 120/208 V the neutral of two legs carries about as much as a leg: it is counted as loaded.',
};

/** What to know when the source takes over: gap, neutral, bond, largest load. */
export function sayTransferPoint(home: Pick<Home, 'loads'>, point: TransferPoint): string {
  switch (point.code) {
    case 'gap':
      return `Gap when the grid fails: ${sayTransferTime(point.transferTime)}. Office electronics are designed to ride through ${point.electronicsMs} ms without voltage (ITI curve, 2000); for a longer gap put a small battery at the computer and the router.`;
    case 'neutral-current':
      return `Neutral at ${point.feed} V: ${amps(point.sharedAmps)} with the 120 V loads shared over both legs, ${amps(point.allOnOneAmps)} with all on one; ${amps(point.inStepAmps)} where one 120 V source feeds both legs, so circuits that share a neutral must not be fed that way. Shared so, and with a quarter more of the largest motor (430.24), the busier leg carries ${amps(point.busierLegAmps)}.`;
    case 'largest-load': {
      const va = shown(point.va, 'VA');
      const carried = point.carried
        ? 'The source carries it'
        : 'It is more than the source gives, so it must not stay connected';
      return `Largest single load: ${loadName(home, point.load)}, ${va}. ${carried} (710.15(A)).`;
    }
    case 'charger-on-generator':
      return `Charging a battery from a generator of ${Math.round(point.ratedWatts)} W: a charger of ${Math.round(point.chargerWatts)} W at most, with nothing else on it, at a power factor of ${point.powerFactor}. It must accept 58 to 63 Hz, for a generator runs fast without load.`;
    default:
      return plain[point.code];
  }
}

const amps = (a: number) => `${a.toFixed(1)} A`;
