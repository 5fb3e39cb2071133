import type { Home } from '../../../home/home';
import type { LoadCalculation } from '../../../plan/electrical/load-calculation';
import type { MeteredCheck } from '../../../plan/electrical/metered';
import type { PanelFit } from '../../../plan/electrical/panel-fit';
import type { SitingPoint } from '../../../plan/electrical/siting-point';
import type { RouteStarting } from '../../../plan/electrical/starting';
import type { WayOut } from '../../../plan/electrical/way-out';
import type { WireRun } from '../../../plan/electrical/wires';
import type { Figure } from '../../../quantity/figure';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import { sayCite } from '../cites/say-cite';
import { sayLoadCalculation } from '../electrical/say-load-calculation';
import { sayMetered } from '../electrical/say-metered';
import { busbarWay, codeSection } from '../electrical/say-panel';
import { saySiting } from '../electrical/say-siting';
import { sayCure } from '../electrical/say-starting';
import { sayWayOut } from '../electrical/say-way-out';
import { sayLengthFrom, wireRunName } from '../electrical/say-wire';
import { loadNames } from '../load-names';

const kva = (va: number) => shown(va, 'VA');

/** The electrical half in a few lines. */
export const electrical = {
  loadCalculation: (given: LoadCalculation) => `Load calculation: ${sayLoadCalculation(given)}`,
  /** With a space before it. */
  neutral: (amps: number) => ` The service neutral carries ${Math.round(amps)} A of it (220.61).`,
  metered: (check: MeteredCheck) => `Metered demand: ${sayMetered(check)}`,
  siting: (point: SitingPoint) => `${saySiting(point)} (${sayCite(point.cite)})`,
  /** `fitting`: the ways by which the source fits; `known`: main and bus are. */
  onThePanel(amps: number, fitting: PanelFit['ways'], known: boolean): string {
    const need = `Source on the panel: 1.25 x its current is ${Math.round(amps)} A`;
    if (fitting.length > 0)
      return `${need}; it fits with the ${fitting.map(({ way, sections }) => `${busbarWay(way)} (${codeSection(sections.edition2023)})`).join(', or the ')}.`;
    return `${need}; ${known ? 'the bus has no room for it by the sums known here' : 'main and bus are not both known, so the bus check waits for the electrician'} (705.12).`;
  },
  wayOut({ way: id, usdLow, usdHigh, year }: WayOut): string {
    const { way, when } = sayWayOut(id);
    return `Cheapest way out here: ${way}, $${usdLow} to $${usdHigh} (${year}), where ${when}.`;
  },
  hardestStart(home: Pick<Home, 'loads'>, needVa: Figure, start: RouteStarting): string {
    const names = loadNames(home, start.starting);
    return `Hardest start: ${names.join(' and ')}${names.length > 1 ? ' together' : ''}, with the rest that it carries running, ${kva(needVa.value)} likely and ${kva(needVa.high)} at the high end. Everything that starts by itself at the same moment, as when power comes back: ${kva(start.allAtOnceVa)}. What the source lends for a moment: ${kva(start.surgeVa)}. Cure: ${sayCure(home, start.cure)}.`;
  },
  wire(run: WireRun): string {
    const copper = run.sizes.find((size) => size.metal === 'copper')!;
    const length = `${Math.round(run.oneWayFt)} ft one way (${sayLengthFrom(run.lengthFrom)})`;
    const size =
      copper.size === null
        ? `no usual size for ${length}; shorten the run`
        : `${copper.size} AWG copper by the ${copper.columnC} °C column; at ${formatQuantity(run.loadAmps, 'A')}, ${run.volts} V and ${length} the voltage drops ${copper.dropPercent!.toFixed(1)} %`;
    return `${wireRunName(run.run)}, ${run.breakerAmps} A breaker: planning size ${size}.`;
  },
};
