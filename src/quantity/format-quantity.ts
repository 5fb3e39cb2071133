/** Motor sizes people know as fractions. */
const HP_FRACTIONS: readonly (readonly [number, string])[] = [
  [1 / 6, '1/6'],
  [1 / 4, '1/4'],
  [1 / 3, '1/3'],
  [1 / 2, '1/2'],
  [3 / 4, '3/4'],
  [3 / 2, '1 1/2'],
  [5 / 2, '2 1/2'],
];
/** 0.33 is typed for 1/3. */
const FRACTION_SLACK_HP = 0.005;

const SPELLED: Readonly<Record<string, string>> = {
  'c/kWh': 'cents/kWh',
  ft2: 'sq ft',
  F: '°F',
};

/**
 * A quantity for people: "1,500 W", "12.5 kW", "3 days", "3/4 hp", "$1,800", "19 cents/kWh".
 * Watts (and VA) from 10,000 are printed as kW; more than 48 hours as days and hours.
 * Units it has no rule for follow the number. Throws RangeError for a value that is not finite.
 */
export function formatQuantity(value: number, unit: string): string {
  if (!Number.isFinite(value)) throw new RangeError(`cannot print ${value} ${unit}`);
  if (unit === 'W' || unit === 'VA') return watts(value, unit);
  if (unit === 'h') return hours(value);
  if (unit === 'hp') return `${horsepower(value)} hp`;
  if (unit === '$') return dollars(value);
  if (unit === '%') return `${digits(value)}%`;
  if (unit === 'count') return digits(value);
  if (unit === 'year') return String(Math.round(value));
  if (unit === 'tons') return `${digits(value)} ${value === 1 ? 'ton' : 'tons'}`;
  if (unit === 'mi') return `${digits(value)} ${value === 1 ? 'mile' : 'miles'}`;
  if (unit === 'people') return `${digits(value)} ${value === 1 ? 'person' : 'people'}`;
  return `${digits(value)} ${SPELLED[unit] ?? unit}`;
}

/** "600 W (300 to 900 W)"; the value alone when all three print alike. */
export function formatRange(low: number, value: number, high: number, unit: string): string {
  if (!(low <= value && value <= high)) {
    throw new RangeError(`range out of order: ${low} <= ${value} <= ${high} ${unit}`);
  }
  const [from, likely, to] = [low, value, high].map((v) => formatQuantity(v, unit)) as [
    string,
    string,
    string,
  ];
  if (from === likely && likely === to) return likely;
  return `${likely} (${withoutSharedUnit(from, to)} to ${to})`;
}

/** "0 and 500 miles", "0 h and 3 days": the ends of what may be typed. */
export function formatBounds(low: number, high: number, unit: string): string {
  const [from, to] = [formatQuantity(low, unit), formatQuantity(high, unit)];
  const shared = NAMED.exec(to)?.[1];
  const short = shared === undefined ? from : withoutUnit(from, unit, shared);
  return `${short} and ${to}`;
}

/** What stands behind a number, and nothing but it. */
const NAMED = /^-?[\d.,/ ]*\d( ?\D+)$/;

/** "1 person" and "20 people" share a unit; "0 h" and "3 days" do not. */
function withoutUnit(text: string, unit: string, shared: string): string {
  const own = NAMED.exec(text)?.[1];
  if (own === undefined) return text;
  const alike = own === shared || ['people', 'mi', 'tons'].includes(unit);
  return alike ? text.slice(0, -own.length) : text;
}

/** By decimal places; one is slow to make and quick to use. */
const FORMATS: Intl.NumberFormat[] = [];

/** Three significant figures or whole numbers, without trailing zeros. */
function digits(value: number): string {
  const size = Math.abs(value);
  const places = size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 || size === 0 ? 2 : 3;
  FORMATS[places] ??= new Intl.NumberFormat('en-US', { maximumFractionDigits: places });
  const text = FORMATS[places].format(value);
  return text === '-0' ? '0' : text;
}

function whole(value: number): string {
  return digits(Math.round(value));
}

function watts(value: number, unit: string): string {
  const size = Math.abs(value);
  if (Math.round(size) >= 10_000) return `${digits(value / 1000)} k${unit}`;
  return `${size >= 10 ? whole(value) : digits(value)} ${unit}`;
}

function hours(value: number): string {
  if (value > 0 && value < 1) return `${digits(value * 60)} min`;
  if (Math.round(value) <= 48) return `${digits(value)} h`;
  const rounded = Math.round(value);
  const days = `${whole(Math.floor(rounded / 24))} days`;
  return rounded % 24 === 0 ? days : `${days} ${rounded % 24} h`;
}

function horsepower(value: number): string {
  const near = HP_FRACTIONS.find(([size]) => Math.abs(size - value) <= FRACTION_SLACK_HP);
  return near === undefined ? digits(value) : near[1];
}

function dollars(value: number): string {
  const size = Math.abs(value);
  const cents = size < 100 && !Number.isInteger(size);
  const text = cents ? size.toFixed(2) : whole(size);
  return value < 0 ? `-$${text}` : `$${text}`;
}

function withoutSharedUnit(from: string, to: string): string {
  const unit = (text: string) => /^[\d.,/ ]+( \D+|%)$/.exec(text)?.[1];
  const shared = unit(from);
  return shared !== undefined && shared === unit(to) ? from.slice(0, -shared.length) : from;
}
