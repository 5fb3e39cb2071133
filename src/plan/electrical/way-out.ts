import type { Home } from '../../home/home';
import type { Route } from '../../routes/route';
import { type EquipmentClass, equipmentCost } from '../../tables/prices/equipment-costs';
import type { LoadVerdict } from './load-calculation';
import type { PanelFit } from './panel-fit';

export type WayOutId = 'sub-panel' | 'load-control' | 'new-panel' | 'larger-service';

/** One way to make the panel and service fit, with its price range, cheapest first. */
export interface WayOut {
  readonly way: WayOutId;
  readonly usdLow: number;
  readonly usdLikely: number;
  readonly usdHigh: number;
  readonly year: number;
}

const costs: Readonly<Record<WayOutId, EquipmentClass>> = {
  'sub-panel': 'backup-subpanel',
  'load-control': 'load-control',
  'new-panel': 'panel-upgrade',
  'larger-service': 'service-upgrade',
};

/**
 * The ways that would solve what does not fit here, cheapest first by the table of costs: chosen circuits on a
 * sub-panel, load control, a meter-side connection, a larger panel or service. Empty when nothing stands against it.
 */
export function waysOut(
  home: Home,
  route: Route,
  given: { fit: PanelFit; load: LoadVerdict },
): WayOut[] {
  const choices = [
    ...spaceChoices(home),
    ...busChoices(given.fit),
    ...loadChoices(given.load),
    ...panelChoices(home),
  ];
  if (route.carries.length === 0) return [];
  return [...new Set(choices)].map(priced).sort((a, b) => a.usdLikely - b.usdLikely);
}

function spaceChoices({ facts }: Home): WayOutId[] {
  const full = facts.told('panel-spaces') && facts.number('panel-spaces')! < 2;
  return full ? ['sub-panel'] : [];
}

/** A bus without room: ahead of the main, limited by controls, or chosen circuits come before a new panel. */
function busChoices(fit: PanelFit): WayOutId[] {
  if (fit.sourceAt125Amps === null || fit.ways.some((way) => way.fits === 'yes')) return [];
  return ['sub-panel', 'load-control', 'new-panel'];
}

function loadChoices(load: LoadVerdict): WayOutId[] {
  if (load === 'passes' || load === 'not-judged') return [];
  return ['load-control', 'larger-service'];
}

function panelChoices({ facts }: Home): WayOutId[] {
  const bad =
    facts.is('panel-kind', 'split-bus', 'fuses') || facts.has('panel-signs', 'known-bad-make');
  return bad ? ['sub-panel', 'new-panel'] : [];
}

function priced(way: WayOutId): WayOut {
  const row = equipmentCost(costs[way]);
  return { way, usdLow: row.low, usdLikely: row.likely, usdHigh: row.high, year: row.year };
}
