import type { ChoiceId } from '#compiled/question-ids.js';
import type { Home, Load } from '../../home/home';
import type { Route } from '../../routes/route';

type Failed = Exclude<ChoiceId<'outage-failed'>, 'nothing'>;

const restsOn =
  (...ids: Load['restsOn']) =>
  (load: Load) =>
    load.restsOn.some((id) => ids.includes(id));
const heats = restsOn('heat-main');

/** By what went wrong before: how it is said, and the loads that would have prevented it. */
const failures: Readonly<Record<Failed, { says: string; by: (load: Load) => boolean }>> = {
  cold: { says: 'the home got too cold', by: heats },
  heat: { says: 'the home got too hot', by: (load) => ['heat', 'both'].includes(load.follows) },
  'no-water': { says: 'no water came from the tap', by: restsOn('water-source') },
  flood: { says: 'water came into the home', by: restsOn('sump') },
  food: { says: 'food went bad', by: restsOn('fridge-count', 'freezer-count') },
  medical: {
    says: 'there was trouble with a health device or medicine',
    by: restsOn('medical-devices'),
  },
  phones: {
    says: 'phones or the internet went dead',
    by: (load) => load.id === 'phone-charging' || restsOn('internet-kind')(load),
  },
  'frozen-pipes': {
    says: 'pipes froze',
    by: (load) => heats(load) || load.id === 'heat-tape',
  },
};

/** What went wrong in a past outage and would again: this home has a load against it, and the route carries none of them. */
export function failedBefore(home: Home, route: Pick<Route, 'carries'>): Failed[] {
  if (!home.facts.told('outage-failed')) return [];
  return home.facts.choices('outage-failed').filter((id): id is Failed => {
    if (id === 'nothing') return false;
    const against = home.loads.filter(failures[id].by);
    return against.length > 0 && !against.some((load) => route.carries.includes(load.id));
  });
}

/** "It may happen again: in a past outage pipes froze, and this route carries nothing against it." */
export const sayFailedBefore = (id: Failed): string =>
  `It may happen again: in a past outage ${failures[id].says}, and this route carries nothing against it.`;
