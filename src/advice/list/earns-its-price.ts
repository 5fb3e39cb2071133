import type { Load } from '../../home/home';
import { guards } from '../../home/measures/guards';
import { loadsOf } from '../../routes/pick-loads';
import { practice } from '../../tables/practice-figures';
import { NEAR } from './near';
import type { Weighed } from './unbeaten';

/** Share of the goal's hours, %, for which a candidate carries the devices for health alone; null where there are none. */
export type DeviceShare = (one: Weighed) => number | null;

/**
 * Whether a dearer candidate is worth what it costs more, where neither is enough. Money follows the harm. Where life hangs on a device,
 * or may, more outages or longer hours of it are worth any price within the money. Else what is added has a price: each thing more on which
 * health, warmth, water or a dry house hangs, by the share of the time it runs; each that a household does otherwise for the time of an outage; and each hundredth
 * of the hours of a device and of the rest of the job.
 */
export function earnsItsPrice(dearer: Weighed, cheaper: Weighed, devices: DeviceShare): boolean {
  const longer = (devices(dearer) ?? 0) - (devices(cheaper) ?? 0);
  const safer = (dearer.value.devices ?? 0) - (cheaper.value.devices ?? 0);
  const mayBeLife = dearer.living.home.lifeSupport !== 'no';
  if (mayBeLife && Math.max(longer, safer) > NEAR) return true;
  const worthUsd =
    addedThingsUsd(dearer, cheaper) +
    Math.max(0, longer) * practice('device-hundredth-worth') +
    Math.max(0, hundredthsMore(dearer, cheaper)) * practice('hundredth-worth');
  return dearer.usd - cheaper.usd <= worthUsd;
}

/** The most that the things it carries more are worth, $; what is neither of the two counts as a part of the job alone. */
function addedThingsUsd(dearer: Weighed, cheaper: Weighed): number {
  const otherwise = addedTo(cheaper, dearer).filter((load) => load.otherwise).length;
  return addedGuardsUsd(dearer, cheaper) + otherwise * practice('done-otherwise-worth');
}

/** The same of those on which health, warmth, water or a dry house hangs. */
export function addedGuardsUsd(dearer: Weighed, cheaper: Weighed): number {
  const { home } = dearer.living;
  const guarding = addedTo(cheaper, dearer).filter(
    (load) => guards(home, load) || keepsLivable(load),
  );
  return (guarding.length * practice('guard-worth') * hoursOf(dearer)) / 100;
}

const addedTo = (one: Weighed, { counted, living }: Weighed): Load[] =>
  loadsOf(living.home, ['must']).filter(
    ({ id }) => counted.carries.includes(id) && !one.counted.carries.includes(id),
  );

/** Warmth, pipes that do not freeze, and water: without them nobody stays for long. */
const keepsLivable = ({ id, follows }: Load) =>
  follows === 'cold' || follows === 'both' || id === 'well';

/** Of the job without what is done otherwise: in outages carried, or in things and hours. */
function hundredthsMore(dearer: Weighed, cheaper: Weighed): number {
  const [more, less] = [jobOf(dearer), jobOf(cheaper)];
  const odds = dearer.value.odds - (less.odds ?? dearer.value.odds);
  // Nothing that runs for longer makes up for what is left out: what carries all of it counts against nothing.
  const all = dearer.value.long && !cheaper.value.long && less.odds === 0 ? more.share : 0;
  return Math.max(more.share - less.share, odds, all);
}

/** Mean share of the goal's hours for which it carries what it carries, %. */
function hoursOf({ counted, living, value }: Weighed): number {
  const must = loadsOf(living.home, ['must']);
  const carried = must.filter(({ id }) => counted.carries.includes(id)).length;
  return carried === 0 ? 0 : Math.min(100, (value.share * must.length) / carried);
}

/** Share of that job, %, and its odds; null where they were counted with what is done otherwise, and it is left out. */
function jobOf(one: Weighed): { share: number; odds: number | null } {
  const must = loadsOf(one.living.home, ['must']);
  const firm = firmOf(must);
  const has = ({ id }: Load) => one.counted.carries.includes(id);
  const share = (hoursOf(one) * firm.filter(has).length) / firm.length;
  return { share, odds: firm.every(has) && !must.every(has) ? null : one.value.odds };
}

/** What is not done otherwise; a household that named nothing else wants just that. */
function firmOf(must: readonly Load[]): readonly Load[] {
  const firm = must.filter(({ otherwise }) => !otherwise);
  return firm.length === 0 ? must : firm;
}
