const FORMATS: Intl.NumberFormat[] = [];

/** Units that stand otherwise than as they are kept. */
const SPELLED: Readonly<Record<string, string>> = {
  'kWh/day': 'kWh a day',
  'gal/day': 'gal a day',
  'ft3/day': 'cubic feet a day',
  'c/kWh': 'cents a kWh',
  ft2: 'sq ft',
  ft3: 'cubic feet',
  F: '°F',
};

/** A value in its own unit with so many digits behind the point at most, to work with by hand: "1,774.5 W". */
export function exactly(value: number, unit: string, places: number): string {
  // Rounded once: a value half way between two is rounded otherwise by the formatter.
  const kept = Number(value.toFixed(places));
  FORMATS[places] ??= new Intl.NumberFormat('en-US', { maximumFractionDigits: places });
  const text = FORMATS[places].format(kept);
  if (unit === '$') return dollars(kept, places);
  if (unit === 'count' || unit === 'year') return text;
  if (unit === '%') return `${text}%`;
  if (unit === 'people') return `${text} ${value === 1 ? 'person' : 'people'}`;
  return `${text} ${SPELLED[unit] ?? unit}`;
}

function dollars(value: number, places: number): string {
  const size = Math.abs(value);
  const cents = Number.isInteger(size) ? 0 : Math.min(2, places);
  const text = size.toLocaleString('en-US', {
    minimumFractionDigits: cents,
    maximumFractionDigits: places,
  });
  return value < 0 ? `-$${text}` : `$${text}`;
}
