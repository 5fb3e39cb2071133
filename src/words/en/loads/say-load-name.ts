import type { LoadName, PlainLoadName, SmallDeviceId } from '../../../home/loads/load-name';
import { listOf } from '../list-of';
import { lowerFirst } from '../lower-first';
import { sayLoadRow } from './load-rows';

const plain: Readonly<Record<PlainLoadName, string>> = {
  lights: 'Lights',
  phones: 'Phones',
  'always-on': 'Chargers and boxes that are always on',
  internet: 'Internet',
  cpap: 'CPAP',
  freezer: 'Freezer',
  'second-ac': 'Second air conditioner',
  'lift-charger': 'Charger of the stair lift',
  'well-pump': 'Well pump',
  'sump-pump': 'Sump pump',
  'grinder-pump': 'Sewage grinder pump',
  'septic-pump': 'Septic pump',
  furnace: 'Furnace',
  'oil-furnace': 'Oil furnace',
  boiler: 'Boiler',
  'heat-pump': 'Heat pump',
  'backup-strips': 'Backup heating strips',
  'electric-furnace': 'Electric furnace',
  baseboard: 'Electric baseboard heat',
  'room-heater': 'Plug-in heater for one room',
  'room-cooler': 'Air conditioner for one room',
};

const devices: Readonly<Record<SmallDeviceId, string>> = {
  'feeding-pump': 'Pump for food or medicine',
  suction: 'Suction or cough machine',
  nebuliser: 'Nebulizer',
  'power-chair': 'Power wheelchair charger',
  'medical-bed': 'Medical bed or lift',
  'other-device': 'Another health device',
};

/** What people call a load, at the start of a sentence. */
export function sayLoadName(called: LoadName): string {
  switch (called.code) {
    case 'row':
      return sayLoadRow(called.row);
    case 'devices':
      return together(called.ticked);
    default:
      return plain[called.code];
  }
}

/** "Suction or cough machine with nebulizer, power wheelchair charger and medical bed or lift". */
function together(ticked: readonly SmallDeviceId[]): string {
  const [first, ...more] = ticked.map((id) => devices[id]);
  return more.length === 0 ? first! : `${first} with ${listOf(more.map(lowerFirst))}`;
}
