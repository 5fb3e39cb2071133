/** One way of writing a unit: what it measures, and how many of the measure's base unit it is. */
export interface UnitWord {
  /** As printed. */
  readonly unit: string;
  readonly measure: string;
  /** Base units in one of these: 1 kW is 1000 W. */
  readonly size: number;
  /** Added after multiplying by `size`; only temperatures need it. */
  readonly offset?: number;
  readonly spellings: readonly string[];
}

/** W in one electric horsepower, exactly (NIST SP 811, Appendix B.8). */
const WATTS_PER_HP = 746;
/** L in one US gallon, exactly (NIST Handbook 44, Appendix C). */
const LITERS_PER_GALLON = 3.785411784;
/** m in one foot, exactly (NIST SP 811, Appendix B). */
const METERS_PER_FOOT = 0.3048;
/** Miles in one kilometer: 5,280 ft to the mile. */
const KM_TO_MILES = 1000 / METERS_PER_FOOT / 5280;
/** Btu/h in one ton of refrigeration, by definition (NIST SP 811, Appendix B.8). */
const BTU_PER_TON = 12000;

const perDay = (words: string[]) =>
  words.flatMap((w) => [w, `${w} a day`, `${w} per day`, `${w}/day`, `${w} each day`]);
const perMonth = (words: string[]) =>
  words.flatMap((w) => [w, `${w} a month`, `${w} per month`, `${w}/month`, `${w} in a month`]);
const minutes = ['min', 'mins', 'minute', 'minutes', 'm'];
const anHour = minutes.flatMap((w) => [`${w} an hour`, `${w} per hour`, `${w}/hour`, `${w}/h`]);

/**
 * Spellings understood, lower case. A spelling may stand under two measures ("c": cents, Celsius);
 * the measure that is asked for wins. The first unit of a name is the one answers are kept in.
 */
export const unitWords: readonly UnitWord[] = [
  { unit: 'W', measure: 'power', size: 1, spellings: ['w', 'watt', 'watts'] },
  { unit: 'kW', measure: 'power', size: 1000, spellings: ['kw', 'kilowatt', 'kilowatts'] },
  { unit: 'VA', measure: 'power', size: 1, spellings: ['va', 'volt-amps', 'volt amps'] },
  { unit: 'kVA', measure: 'power', size: 1000, spellings: ['kva'] },
  { unit: 'A', measure: 'current', size: 1, spellings: ['a', 'amp', 'amps', 'ampere', 'amperes'] },
  { unit: 'V', measure: 'voltage', size: 1, spellings: ['v', 'volt', 'volts', 'vac'] },
  { unit: 'Ah', measure: 'charge', size: 1, spellings: ['ah', 'amp-hours', 'amp hours'] },
  {
    unit: 'kWh',
    measure: 'energy',
    size: 1,
    spellings: perMonth(['kwh', 'kilowatt-hours', 'kilowatt hours']),
  },
  { unit: 'Wh', measure: 'energy', size: 1 / 1000, spellings: ['wh', 'watt-hours', 'watt hours'] },
  { unit: 'MWh', measure: 'energy', size: 1000, spellings: ['mwh'] },
  { unit: 'h', measure: 'time', size: 1, spellings: perDay(['h', 'hr', 'hrs', 'hour', 'hours']) },
  { unit: 'min', measure: 'time', size: 1 / 60, spellings: [...perDay(minutes), ...anHour] },
  {
    unit: 's',
    measure: 'time',
    size: 1 / 3600,
    spellings: ['s', 'sec', 'secs', 'second', 'seconds'],
  },
  { unit: 'days', measure: 'time', size: 24, spellings: ['d', 'day', 'days'] },
  { unit: 'weeks', measure: 'time', size: 168, spellings: ['wk', 'wks', 'week', 'weeks'] },
  { unit: 'months', measure: 'time', size: 730, spellings: ['mo', 'mos', 'month', 'months'] },
  { unit: 'years', measure: 'time', size: 8760, spellings: ['y', 'yr', 'yrs', 'year', 'years'] },
  { unit: 'hp', measure: 'motor', size: 1, spellings: ['hp', 'horsepower', 'horse power'] },
  { unit: 'W', measure: 'motor', size: 1 / WATTS_PER_HP, spellings: ['w', 'watt', 'watts'] },
  {
    unit: 'kW',
    measure: 'motor',
    size: 1000 / WATTS_PER_HP,
    spellings: ['kw', 'kilowatt', 'kilowatts'],
  },
  { unit: 'tons', measure: 'cooling', size: 1, spellings: ['t', 'ton', 'tons'] },
  {
    unit: 'Btu',
    measure: 'cooling',
    size: 1 / BTU_PER_TON,
    spellings: ['btu', 'btus', 'btu/h', 'btuh', 'btu/hr', 'btu per hour'],
  },
  {
    unit: 'kBtu',
    measure: 'cooling',
    size: 1000 / BTU_PER_TON,
    spellings: ['kbtu', 'kbtu/h', 'mbh'],
  },
  { unit: 'gal', measure: 'volume', size: 1, spellings: ['gal', 'gals', 'gallon', 'gallons'] },
  {
    unit: 'L',
    measure: 'volume',
    size: 1 / LITERS_PER_GALLON,
    spellings: ['l', 'liter', 'liters', 'litre', 'litres'],
  },
  { unit: 'ft', measure: 'length', size: 1, spellings: ['ft', 'foot', 'feet', "'"] },
  { unit: 'mi', measure: 'distance', size: 1, spellings: ['mi', 'mile', 'miles'] },
  {
    unit: 'km',
    measure: 'distance',
    size: KM_TO_MILES,
    spellings: ['km', 'kms', 'kilometer', 'kilometers', 'kilometre', 'kilometres'],
  },
  { unit: 'in', measure: 'length', size: 1 / 12, spellings: ['in', 'inch', 'inches', '"'] },
  { unit: 'yd', measure: 'length', size: 3, spellings: ['yd', 'yds', 'yard', 'yards'] },
  {
    unit: 'm',
    measure: 'length',
    size: 1 / METERS_PER_FOOT,
    spellings: ['m', 'meter', 'meters', 'metre', 'metres'],
  },
  {
    unit: 'ft2',
    measure: 'area',
    size: 1,
    spellings: ['ft2', 'sq ft', 'sqft', 'sf', 'square foot', 'square feet'],
  },
  {
    unit: 'm2',
    measure: 'area',
    size: 1 / METERS_PER_FOOT ** 2,
    spellings: ['m2', 'sq m', 'sqm', 'square meters', 'square metres'],
  },
  { unit: '%', measure: 'share', size: 1, spellings: ['%', 'percent', 'per cent', 'pct'] },
  { unit: '$', measure: 'money', size: 1, spellings: ['$', 'dollar', 'dollars', 'usd', 'bucks'] },
  { unit: 'cents', measure: 'money', size: 1 / 100, spellings: ['¢', 'cent', 'cents'] },
  {
    unit: 'c/kWh',
    measure: 'price',
    size: 1,
    spellings: [
      'c',
      '¢',
      'cent',
      'cents',
      'c/kwh',
      '¢/kwh',
      'cents/kwh',
      'cents a kwh',
      'cents per kwh',
      '¢ per kwh',
    ],
  },
  {
    unit: '$/kWh',
    measure: 'price',
    size: 100,
    spellings: ['$', 'dollars', '$/kwh', '$ a kwh', '$ per kwh', '$ kwh', 'dollars per kwh'],
  },
  {
    unit: 'people',
    measure: 'people',
    size: 1,
    spellings: ['people', 'person', 'persons', 'of us'],
  },
  { unit: 'count', measure: 'count', size: 1, spellings: [] },
  { unit: 'year', measure: 'year', size: 1, spellings: ['s', 'year'] },
  {
    unit: 'per year',
    measure: 'rate',
    size: 1,
    spellings: [
      'x',
      'times',
      'time',
      'per year',
      'a year',
      '/year',
      'times a year',
      'times per year',
      'time a year',
      'x a year',
      'x per year',
    ],
  },
  {
    unit: 'per month',
    measure: 'rate',
    size: 12,
    spellings: ['per month', 'a month', '/month', 'times a month', 'times per month', 'x a month'],
  },
  {
    unit: 'F',
    measure: 'temperature',
    size: 1,
    spellings: ['f', '°', '°f', 'degrees', 'degrees f', 'deg f'],
  },
  {
    unit: 'C',
    measure: 'temperature',
    size: 1.8,
    offset: 32,
    spellings: ['c', '°c', 'degrees c', 'deg c'],
  },
];

/** The unit answers are kept in. Throws RangeError for a name that no question may use. */
export function canonicalUnit(name: string): UnitWord {
  const found = unitWords.find((word) => word.unit === name);
  if (found === undefined) throw new RangeError(`no such unit: ${name}`);
  return found;
}
