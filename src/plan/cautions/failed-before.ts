import type { ChoiceId } from '#compiled/question-ids.js';
import type { Home, Load } from '../../home/home';
import type { Route } from '../../routes/route';

/** What went wrong in a past outage. */
export type Failed = Exclude<ChoiceId<'outage-failed'>, 'nothing'>;

const restsOn =
  (...ids: Load['restsOn']) =>
  (load: Load) =>
    load.restsOn.some((id) => ids.includes(id));
const heats = restsOn('heat-main');

/** The loads that would have prevented it. */
const against: Readonly<Record<Failed, (load: Load) => boolean>> = {
  cold: heats,
  heat: (load) => ['heat', 'both'].includes(load.follows),
  'no-water': restsOn('water-source'),
  flood: restsOn('sump'),
  food: restsOn('fridge-count', 'freezer-count'),
  medical: restsOn('medical-devices'),
  phones: (load) => load.id === 'phone-charging' || restsOn('internet-kind')(load),
  'frozen-pipes': (load) => heats(load) || load.id === 'heat-tape',
};

/** What went wrong in a past outage and would again: this home has a load against it, and the route carries none of them. */
export function failedBefore(home: Home, route: Pick<Route, 'carries'>): Failed[] {
  if (!home.facts.told('outage-failed')) return [];
  return home.facts.choices('outage-failed').filter((id): id is Failed => {
    if (id === 'nothing') return false;
    const loads = home.loads.filter(against[id]);
    return loads.length > 0 && !loads.some((load) => route.carries.includes(load.id));
  });
}
