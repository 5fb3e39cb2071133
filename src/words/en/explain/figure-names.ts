import type { PlainPart } from '../../../bill/lifecycle/part-name';
import type { LoadName } from '../../../home/loads/load-name';
import type { FigureName, PlainFigureName } from '../../../quantity/figure-name';
import { sayLoadName } from '../loads/say-load-name';
import { sayPart } from '../parts/say-part';

const plain: Readonly<Record<PlainFigureName, string>> = {
  elevation: 'height above the sea',
  'well-power': 'running power of the well pump',
  'well-start': 'starting demand of the well pump',
  'pump-energy': 'energy of the pump',
  'sump-power': 'running power of the sump pump',
  'sump-start': 'starting demand of the sump pump',
  'sump-storm-day': 'energy of the sump pump on a storm day',
  'compressor-size': 'size of the compressor',
  'compressor-power': 'running power of the compressor',
  'compressor-start': 'starting demand of the compressor',
  'power-by-size': 'running power',
  'car-charger-power': 'power of the car charger',
  'lift-charger-power': 'power of the charger of the stair lift',
  'room-coolers-power': 'running power of the room coolers',
  'heater-power': 'running power of the heater',
  'plug-heater-power': 'running power of a plug-in heater',
  'electric-heat-energy': 'energy of electric heat on a winter day',
};

/** What a figure is. */
export function sayFigureName(name: FigureName): string {
  if (typeof name === 'string') return plain[name];
  switch (name.code) {
    case 'running-power':
      return `running power of ${ofLoad(name.load)}`;
    case 'apparent-power':
      return `apparent power of ${ofLoad(name.load)}`;
    case 'starting-demand':
      return `starting demand of ${ofLoad(name.load)}`;
    case 'starting-current':
      return `starting current of ${ofLoad(name.load)}`;
    case 'energy':
      return `energy of ${ofLoad(name.load)}`;
    case 'energy-by-hours':
      return `energy of the ${ofLoad(name.load)}`;
    case 'power-at-208-volts':
      return `power of ${ofLoad(name.load)} at 208 V`;
    case 'equipment':
      return sayPart({ code: name.class as PlainPart });
    case 'usual-day':
      return `all the loads named, on an average ${name.season} day`;
    case 'hard-day':
      return `energy on a hard ${name.season} day`;
    case 'in-warm-room':
      return `${name.day === undefined ? '' : sayFigureName(name.day)} in a warm room`;
    case 'average-price':
      return `average price of a kWh in ${name.state}`;
  }
}

const ofLoad = (called: unknown) => sayLoadName(called as LoadName);
