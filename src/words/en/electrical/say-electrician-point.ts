import rules from '#compiled/words/en/rules.js';
import type { Home } from '../../../home/home';
import type { ElectricianPoint } from '../../../plan/steps/electrician-points';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shown, shownRange } from '../../../quantity/shown';
import { sayRule } from '../../rule-sentences';
import { firstSentence } from '../first-sentence';
import { loadNames } from '../load-names';
import { sayRouteTitle } from '../routes/route-titles';

const noWork =
  'No work in this plan needs a licensed electrician. What would: any wire fixed to the house, such as an inlet, a transfer switch, a new outlet or circuit, a fixed generator, a fixed battery or roof solar, with a permit.';

/** A point for the electrician. */
export function sayElectricianPoint(home: Pick<Home, 'loads'>, given: ElectricianPoint): string {
  switch (given.code) {
    case 'plugs-only':
      return 'The route advised asks for no wiring work; the electrician is needed for what stands below.';
    case 'no-work':
      return noWork;
    case 'no-work-yet':
      return `${noWork} Answers that are missing may still call for one, for what stands below.`;
    case 'panel-and-wires':
      return `Everything inside the panel, and every wire fixed to the house, for: ${sayRouteTitle(given.called).toLowerCase()}.`;
    case 'circuits': {
      const more = loadNames(home, given.more).join(', ');
      const also = more === '' ? '' : `; and of what is good to have: ${more}`;
      return `Circuits to carry, which must keep running: ${loadNames(home, given.must).join(', ')}${also}.`;
    }
    case 'source':
      return sourceMustGive(given);
    case 'storage':
      return `Usable storage: ${formatQuantity(given.kwh, 'kWh')} at five years old.`;
    case 'service': {
      const spaces = given.spaces === null ? 'not counted' : `${given.spaces}`;
      return `Service as found by the household, to be confirmed on site: main breaker ${amps(given.mainAmps)}, panel bus ${amps(given.busAmps)}, free spaces ${spaces}.`;
    }
    case 'theirs-to-decide':
      return "The code edition in force, local amendments, the load calculation, the bus check, grounding and the one neutral bond are the electrician's and the inspector's to decide.";
    case 'caution': {
      const says = sayRule(rules, given);
      return given.whole ? says : firstSentence(says);
    }
  }
}

const amps = (a: number | null) => (a === null ? 'not known' : formatQuantity(a, 'A'));

function sourceMustGive(given: Extract<ElectricianPoint, { code: 'source' }>): string {
  const { watts: w, startVa: va } = given;
  const soft = given.softStarter ? ' and the compressor behind its soft starter' : '';
  const label = shown(given.labelWatts, 'W');
  const gives = shown(given.givesWatts, 'W');
  const size = gives === label ? label : `${label} on its label, ${gives} at this height and heat`;
  return `With all of these on at once${soft}, the source must give ${shownRange(w, 'W')} for hours and stand their hardest start, with the rest running, of ${shownRange(va, 'VA')}. Plan size: ${size}.`;
}
