import type { PartName, PlainPart } from '../../../bill/lifecycle/part-name';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import { sayRouteTitle } from '../routes/route-titles';

const plain: Readonly<Record<PlainPart, string>> = {
  preparation: 'Lights, radio, water, cooler, fire and carbon monoxide alarms',
  cords: 'Outdoor cords rated for the load, one to three',
  'room-heater': 'Listed plug-in heater of 750 to 1500 W, with a tip-over switch',
  'room-cooler': 'Window air conditioner for one room, 120 V, variable speed (inverter)',
  'fuel-storage': 'Approved cans or cylinders for three days of fuel',
  'power-pack': 'Plug-in power pack',
  'portable-solar': 'Folding solar modules for a power pack',
  'small-single-job-battery': 'Small battery for one job: a furnace fan, an internet box',
  'sump-battery': 'Second sump pump with its own battery and alarm',
  'portable-engine': 'Portable generator, 2 to 10 kW',
  'inlet-interlock': 'Power inlet and breaker interlock, installed',
  'manual-transfer': 'Manual transfer switch with inlet, installed',
  'automatic-transfer': 'Automatic transfer switch alone, installed',
  'standby-engine': 'Standby generator with automatic transfer switch, installed',
  'gas-line': 'Gas line and meter work for a generator',
  'propane-tank': 'Propane tank for a standby generator, set and piped',
  battery: 'Home battery with inverter and its own grid disconnect, installed',
  'battery-with-solar': 'Home battery bought together with, or added to, solar',
  'load-control': 'Load control: relays or a panel that sheds circuits by itself',
  'backup-subpanel': 'Subpanel for the chosen circuits',
  solar: 'Roof solar with inverter, installed, per W of modules',
  'solar-rewire': 'Solar panels that are there put behind the battery, by an installer',
  'solar-inverter': 'Replacement solar inverter, per W of modules',
  'soft-starter': 'Soft starter on an air conditioner or heat pump, installed',
  'panel-upgrade': 'Electrical panel upgrade',
  'service-upgrade': 'Larger electric service with utility work',
  permit: 'Permit and inspection',
  'vehicle-inlet': 'Inlet and interlock for a vehicle that has a power outlet',
  'vehicle-two-way-charger': 'Two-way vehicle charger with grid isolation, installed',
  'own-cords': 'Your own cords',
  'own-inlet': 'Your own inlet and transfer equipment',
  'own-transfer-switch': 'Your own transfer switch',
  'inlet-of-120': '120 V inlet and transfer switch for chosen circuits',
  'inlet-to-charger': 'Inlet for the generator to the charger',
  'connection-to-tank': 'Connection to the propane tank, by a gas fitter',
  'propane-cylinders': 'Approved cylinders for propane',
};

/** What a part is called, at the head of a line: "Battery, 15 kWh, with an inverter". */
export function sayPart(part: PartName): string {
  switch (part.code) {
    case 'own-battery':
      return `The battery you have, ${formatQuantity(part.kwh, 'kWh')}`;
    case 'own-pack':
      return `The power pack you have, ${oneDigit(part.kwh)} kWh`;
    case 'pack':
      return `Power pack, ${part.kwh} kWh`;
    case 'small-battery':
      return `Small battery, ${part.kwh} kWh`;
    case 'one-job-battery':
      return `Battery for one job, ${part.kwh} kWh`;
    case 'own-generator':
      return `Your own generator, ${oneDigit(part.kw)} kW running`;
    case 'own-standby':
      return `Your own standby generator, ${oneDigit(part.kw)} kW`;
    case 'own-panels':
      return `The solar panels you have, ${formatQuantity(part.kw, 'kW')}`;
    case 'portable-generator':
      return `Portable generator, ${oneDigit(part.kw)} kW running`;
    case 'standby-generator':
      return `Standby generator, ${oneDigit(part.kw)} kW, with switch`;
    case 'roof-panels':
      return `Roof solar, ${formatQuantity(part.kw, 'kW')}`;
    case 'battery-with-inverter':
      return `Battery, ${part.kwh} kWh, with an inverter${part.inverterWatts === null ? '' : ` of ${shown(part.inverterWatts, 'W')}`}`;
    case 'cans':
      return `Approved cans for ${part.gallons} ${part.more ? 'more gal' : 'gal'} of ${part.fuel}`;
    case 'quoted':
      return `${sayRouteTitle(part.route)}, by your quote`;
    default:
      return plain[part.code];
  }
}

const oneDigit = (amount: number) => Math.round(10 * amount) / 10;
