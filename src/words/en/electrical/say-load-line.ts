import type { LoadName } from '../../../home/loads/load-name';
import type {
  ClimateShare,
  CookingHow,
  LineIs,
  LineName,
} from '../../../physics/service-load/line-is';
import { sayLoadName } from '../loads/say-load-name';

const shares: Readonly<Record<ClimateShare, string>> = {
  'cooling-whole': 'Cooling at 100 %',
  'heating-whole': 'Heating at 100 %',
  'pump-and-backup': 'Heat pump at 100 % and back-up heat at 65 %',
  'electric-heat-few': 'Electric heat at 65 %',
  'electric-heat-many': 'Electric heat, four controls or more, at 40 %',
  'storage-heat-whole': 'Storage or continuous heat at 100 %',
};

/** What a line of a load calculation is of: "Kitchen circuits, 2 x 1500 VA". */
export function sayLoadLine(is: LineIs): string {
  switch (is.code) {
    case 'general-load':
      return 'General load';
    case 'sum-of-these':
      return 'Sum of these';
    case 'general-after-demand':
      return 'General load after demand';
    case 'dryer':
      return 'Electric dryer';
    case 'room-heaters':
      return 'Room heaters, four controls or more';
    case 'largest-motor':
      return '25 % of the largest motor';
    case 'metered-peak':
      return 'Highest metered demand';
    case 'metered-peak-and-quarter':
      return 'Highest metered demand at 125 %';
    case 'new-load':
      return 'New load';
    case 'lighting':
      return `Lighting and outlets, ${is.ft2} ft2 x ${is.vaPerFt2} VA`;
    case 'kitchen-circuits':
      return `Kitchen circuits, ${is.circuits} x ${is.circuitVa} VA`;
    case 'laundry-circuits':
      return `Laundry circuit, ${is.circuits} x ${is.circuitVa} VA`;
    case 'first':
      return `First ${is.va} VA at 100 %`;
    case 'next':
      return `Next ${is.va} VA at ${percent(is.share)}`;
    case 'above':
      return `Above ${is.va} VA at ${percent(is.share)}`;
    case 'other':
      return `Other ${is.va} VA at ${percent(is.share)}`;
    case 'cooking':
      return `Cooking (${sayCooking(is.how)})`;
    case 'cooking-share':
      return `Cooking at ${percent(is.share)}`;
    case 'dryer-share':
      return `Dryer at ${percent(is.share)}`;
    case 'fixed-appliances':
      return `Fixed appliances at ${is.share * 100} %: ${is.names.map(lineName).join(', ')}`;
    case 'other-appliances':
      return `Other appliances at ${is.share * 100} %: ${is.names.map(lineName).join(', ')}`;
    case 'load':
      return lineName(is.name);
    case 'climate':
      return is.leftOut ? `${shares[is.of]}, left out as smaller` : shares[is.of];
  }
}

/** As somebody typed it, or what the code says. */
function lineName(name: LineName): string {
  if (typeof name === 'string') return name;
  return name.code === 'range-assumed' ? 'Range, assumed' : sayLoadName(name as LoadName);
}

const notes = { 0: '', 1: ', note 1', 2: ', notes 1 and 2' };

function sayCooking(how: CookingHow): string {
  switch (how.code) {
    case 'none':
      return 'none';
    case 'more-than-the-table':
      return 'whole, more units than the table here';
    case 'whole-outside':
      return `whole, outside the table: ${how.va} VA`;
    case 'column-c':
      return `column C for ${how.units}${notes[how.notes]}`;
    case 'share':
      return `${percent(how.share)} of ${how.va} VA`;
    case 'both':
      return how.parts.map(sayCooking).join(' and ');
    case 'and-whole':
      return `${sayCooking(how.table)}; and ${how.va} VA whole, outside the table`;
  }
}

const percent = (share: number) => `${Math.round(share * 100)} %`;
