import { shown } from '../../quantity/shown';
import type { PlainReason, SourceName, WhyLeftOut } from '../../routes/why-left-out';

const plain: Readonly<Record<PlainReason, string>> = {
  'wall-outlet-only': 'must plug straight into a wall outlet, never into a cord or a pack',
  'wired-in': 'is wired in, not plugged in',
  'wired-240': 'needs 240 volts by a wire fixed to the house; a cord does not bring them',
  'needs-240': 'needs 240 volts; this gives 120',
  'own-generator-120':
    'needs 240 volts and your generator gives 120: it cannot run it, whatever its watts',
  'own-standby-120': 'needs 240 volts, and 120 is all that is known of your generator',
  'off-in-any-outage': 'draws so much that it stays off in any outage',
  'more-than-carried': 'is more than this source carries',
  'too-much-energy': 'takes more energy than a home battery can hold for so long',
  'one-job-only': 'this battery does one job only',
  'too-hard-for-pack': 'starts or draws too hard for a plug-in pack',
  'too-hard-for-vehicle': 'starts or draws too hard for the outlet of the vehicle',
};

const sources: Readonly<Record<SourceName, string>> = {
  'portable-generator': 'a portable generator',
  'own-generator': 'your generator',
  'standby-generator': 'a standby generator of this class',
  'own-standby': 'your standby generator',
  'home-inverter': 'a home inverter',
  'battery-there': 'the battery you have',
};

/** Why a load is not carried, to stand after its name: "is wired in, not plugged in". */
export function sayLeftOut(why: WhyLeftOut): string {
  switch (why.code) {
    case 'half-too-small': {
      const watts = shown(why.halfWatts, 'W');
      const va = shown(why.halfStartVa, 'VA');
      return `too much for one half of a 120/240 V generator, which carries ${watts} on each and lends ${va} for a start`;
    }
    case 'too-hard': {
      const start = why.startVa === null ? '' : `, or to start it (${kva(why.startVa)})`;
      return `too much for ${sources[why.source]} to run with the rest${start}`;
    }
    default:
      return plain[why.code];
  }
}

const kva = (va: number) => shown(va, 'VA');
