import type { Home } from '../../home/home';
import type { Route } from '../../routes/route';
import { type EquipmentClass, equipmentCost } from '../../tables/equipment-costs';
import type { LoadVerdict } from './load-calculation';
import type { PanelFit } from './panel-fit';

/** One way to make the panel and service fit, with its price range, cheapest first. */
export interface WayOut {
  readonly way: string;
  readonly when: string;
  readonly usdLow: number;
  readonly usdLikely: number;
  readonly usdHigh: number;
  readonly year: number;
}

type Choice = Pick<WayOut, 'way' | 'when'> & { readonly cost: EquipmentClass };

/**
 * The ways that would solve what does not fit here, cheapest first by the table of costs: chosen circuits on a
 * sub-panel, load control, a meter-side connection, a larger panel or service. Empty when nothing stands against it.
 */
export function waysOut(
  home: Home,
  route: Route,
  of: { fit: PanelFit; load: LoadVerdict },
): WayOut[] {
  const choices = [
    ...spaceChoices(home),
    ...busChoices(of.fit),
    ...loadChoices(of.load),
    ...panelChoices(home),
  ];
  const once = [...new Map(choices.map((choice) => [choice.way, choice])).values()];
  if (route.carries.length === 0) return [];
  return once.map(priced).sort((a, b) => a.usdLikely - b.usdLikely);
}

const subPanel: Choice = {
  way: 'a sub-panel for the chosen circuits',
  when: 'the loads that must run move to it, so the main panel needs no room and the source need not carry the whole house',
  cost: 'backup-subpanel',
};
const loadControl: Choice = {
  way: 'listed load control that holds back the largest loads',
  when: 'the calculated load or the source is too small only while the largest loads run',
  cost: 'load-control',
};
const newPanel: Choice = {
  way: 'a new panel with a larger bus',
  when: 'the panel itself is unsound, or its bus is the only limit',
  cost: 'panel-upgrade',
};

function spaceChoices({ facts }: Home): Choice[] {
  const full = facts.told('panel-spaces') && facts.number('panel-spaces')! < 2;
  return full ? [subPanel] : [];
}

/** A bus without room: ahead of the main, limited by controls, or chosen circuits come before a new panel. */
function busChoices(fit: PanelFit): Choice[] {
  if (fit.sourceAt125Amps === null || fit.ways.some((way) => way.fits === 'yes')) return [];
  return [subPanel, loadControl, newPanel];
}

function loadChoices(load: LoadVerdict): Choice[] {
  if (load === 'passes' || load === 'not judged') return [];
  const service: Choice = {
    way: 'a larger service',
    when: 'the load stays over the main after load control, and the utility agrees',
    cost: 'service-upgrade',
  };
  return [loadControl, service];
}

function panelChoices({ facts }: Home): Choice[] {
  const bad =
    facts.is('panel-kind', 'split-bus', 'fuses') || facts.has('panel-signs', 'known-bad-make');
  return bad ? [subPanel, newPanel] : [];
}

function priced({ way, when, cost }: Choice): WayOut {
  const row = equipmentCost(cost);
  return { way, when, usdLow: row.low, usdLikely: row.likely, usdHigh: row.high, year: row.year };
}
