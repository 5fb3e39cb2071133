import { formatQuantity } from '../../quantity/format-quantity';
import type { Stop } from '../../routes/stops/stop';
import type { StopCode } from '../../routes/stops/stop-codes';

const says: Readonly<Record<Exclude<StopCode, 'roof-too-small'>, string>> = {
  'generator-at-apartment':
    'a generator cannot run at an apartment: its exhaust kills, and a balcony counts as indoors',
  'generator-place-unknown':
    'we do not know of an open place outdoors at least 20 feet from every door, window and vent; find one first',
  'generator-place-too-close':
    "the place you told us is closer than 20 feet to a door, window or vent, yours or the neighbors'",
  'generator-place-enclosed':
    "the place you told us is closed in or under a roof; it must be open, and 20 feet from every door, window and vent, yours and the neighbors'",
  'generator-place-none':
    "there is no open place outdoors at least 20 feet from every door, window and vent, yours and the neighbors'",
  'association-bars-generator':
    "your association's rules say no generator outdoors: ask it for an exception in writing first",
  'nobody-runs-it': 'nobody here can lift, start and refuel a generator and work the breakers',
  'gas-source-unknown':
    'you burn gas, but we do not know whether it comes from the street or from a tank; find out first',
  'gas-unknown': 'we do not know whether gas or a propane tank is here; find out first',
  'gas-tank-unknown': 'we do not know whether a propane tank is here; find out first',
  'gas-none': 'there is no gas from the street and no propane tank here',
  'wiring-of-the-building': 'the wiring belongs to the building',
  'owner-not-asked': "you rent: wiring needs the owner's consent in writing",
  'owner-unknown':
    "we do not know whether the home is yours; a rented one needs the owner's consent in writing before anything is wired",
  'panel-in-trouble':
    'the electrical panel shows signs of trouble: an electrician must clear it first',
  'battery-place-unknown':
    'we do not know of a place for a battery that the rules allow; find one first',
  'battery-place-none': 'there is no place for a fixed battery',
  'battery-in-living-space': 'a battery may not be fixed in a bedroom or living space',
  'battery-below-flood': 'water has been in the house: a battery in the basement would be flooded',
  'roof-unknown': 'no roof with sun is known here; measure one first',
  'roof-full-or-unknown':
    'no roof with sun is known here for more panels than there are; measure one first',
  'roof-none': 'there is no room for panels on a roof of yours',
  'roof-of-another': 'the roof is not yours to build on',
  'no-vehicle': 'no vehicle with outlets was named',
  'vehicle-unknown': 'we do not know whether you have a vehicle with outlets',
  'vehicle-too-small': 'its outlet is too small for what must run',
  'own-standby-fuel-unknown':
    'we do not know what your standby generator burns; read its label first',
  'own-battery-too-weak': 'it is too weak for anything that must keep running',
  'portable-carries-nothing': 'a portable generator carries none of what must run',
  'standby-carries-nothing': 'it carries none of what must run',
  'no-inverter-starts-it': 'no home inverter starts what must run',
  'nothing-plugs-in': 'nothing that must keep running plugs into an ordinary outlet',
  'no-single-job': 'no single job of this home fits a small battery',
  'nothing-must-run':
    'nothing was named that must keep running, so there is nothing to size it for',
  'must-run-unknown': 'we do not know yet what must keep running',
};

/** Why a route cannot be used here, to stand after its name. */
export function sayStop({ code, roomKw = 0 }: Stop): string {
  if (code !== 'roof-too-small') return says[code];
  return `the roof has room for about ${formatQuantity(roomKw, 'kW')} of panels once paths for firefighters are left, too little to help`;
}
