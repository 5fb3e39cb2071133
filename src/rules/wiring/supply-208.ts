import type { Load } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import { resistiveLoadAt } from '../../physics/resistive-load';
import { timesFigure } from '../../quantity/figure-arithmetic';
import { type Rule, type RuleFigure, yes } from '../rule';

/** What heats by an element made for 240 V. */
const elements: readonly LoadId[] = ['water-heater', 'heat-strips', 'range'];

/** 120/208 V buildings, with what each element of this home gives there. */
export const supply208: Rule = {
  id: 'supply-208',
  applies: ({ facts, loads }) => {
    if (!facts.told('supply-volts') || !facts.is('supply-volts', 'v120-208')) return null;
    const tank = facts.is('water-heater', 'electric-tank', 'tankless-electric');
    const heats = loads.filter(
      (load) =>
        elements.includes(load.id) && load.volts === 240 && (load.id !== 'water-heater' || tank),
    );
    const trigger = yes('building-120-208-volts');
    return heats.length > 0 ? { ...trigger, figures: heats.map(at208) } : trigger;
  },
};

function at208({ id, called, runningWatts }: Load): RuleFigure {
  const { watts } = resistiveLoadAt({ ratedWatts: 1, ratedVolts: 240, volts: 208 });
  const figure = timesFigure(runningWatts, watts, {
    name: { code: 'power-at-208-volts', load: called },
  });
  return { load: id, called, at: 'at-208-volts', figure };
}
