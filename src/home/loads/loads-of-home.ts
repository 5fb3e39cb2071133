import type { Widths } from '../answer-figure';
import { type BillYear, billYearOf } from '../bill/bill-year';
import { calibrate } from '../bill/calibrate';
import type { CalibrationFinding } from '../bill/calibration';
import type { Facts } from '../facts';
import type { Load, Site } from '../home';
import { climateHours } from '../weather/climate-hours';
import { big } from './big';
import { coldFood } from './cold-food';
import type { LoadContext } from './context';
import { cooling } from './cooling';
import { heatTape } from './heat-tape';
import { heating } from './heating';
import { hotWater } from './hot-water';
import { living } from './living';
import { withMeasured } from './measured';
import { medical } from './medical';
import { inOneRoom } from './one-room';
import { pumps } from './pumps';
import { withStoredWater } from './stored-water';

/** The loads of a home, for plan and pane alike. */
export interface LoadsOfHome {
  /** As bills know them. */
  readonly usual: readonly Load[];
  /** In an outage: one room where one is enough, a pump that rests on stored water. */
  readonly loads: readonly Load[];
  readonly billYear: BillYear | null;
  readonly calibration: CalibrationFinding | null;
}

/** @param site null while the place is not known: the table's hours stand, and no bill is held against them */
export function loadsOfHome(facts: Facts, widths: Widths, site: Site | null): LoadsOfHome {
  const hours = site === null ? null : climateHours(site.place.climate);
  const context = { facts, widths, climate: hours };
  const named = allLoads(context);
  const inOutage = (usual: readonly Load[]) =>
    withStoredWater(facts, inOneRoom(context, usual, named));
  if (site === null || hours === null) {
    return { usual: named, loads: inOutage(named), billYear: null, calibration: null };
  }
  const billYear = billYearOf(facts, named, site.place.climate);
  const { loads: usual, finding } = calibrate({ facts, loads: named, hours, billYear });
  return { usual, loads: inOutage(usual), billYear, calibration: finding };
}

/** Everything in the home that uses electricity, medical devices first. */
function allLoads(context: LoadContext): Load[] {
  const groups = [medical, heating, heatTape, cooling, pumps, coldFood, living, hotWater, big];
  return withMeasured(
    context.facts,
    groups.flatMap((group) => group(context)),
  );
}
