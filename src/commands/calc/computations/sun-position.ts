import { sunPosition } from '../../../physics/sun/sun-position';
import { sunTimes } from '../../../physics/sun/sun-times';
import type { Calculation, Outcome } from '../calculation';
import type { Values } from '../values';

/** Where the sun stands at a place and time, and when it rises and sets that day. */
export const sunPositionOf: Calculation = {
  name: 'sun-position',
  about: 'where the sun stands, and when it rises and sets',
  inputs: [
    {
      kind: 'number',
      key: 'lat',
      about: 'latitude, north positive',
      unit: 'deg',
      from: -90,
      to: 90,
    },
    {
      kind: 'number',
      key: 'lon',
      about: 'longitude, east positive (all of the US is negative)',
      unit: 'deg',
      from: -180,
      to: 180,
    },
    {
      kind: 'text',
      key: 'date',
      about: 'day, 1950 to 2049',
      pattern: /^(19[5-9]\d|20[0-4]\d)-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/,
      form: 'YYYY-MM-DD',
    },
    {
      kind: 'text',
      key: 'time',
      about: 'clock time',
      pattern: /^([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/,
      form: 'HH:MM',
    },
    {
      kind: 'number',
      key: 'utc-offset',
      about: 'hours of the clock ahead of UTC (US winter: -5 to -10)',
      unit: 'h',
      from: -12,
      to: 14,
    },
  ],
  source: 'almanac of Michalsky, Solar Energy 40 (1988) 227-235; within 0.02 degree, no refraction',
  example: 'lat=39.74 lon=-105.18 date=2026-06-21 time=12:00 utc-offset=-7',
  run: sunAt,
};

function sunAt(values: Values): Outcome {
  const [latDeg, lonDeg] = [values.number('lat'), values.number('lon')];
  const utcOffsetH = values.number('utc-offset');
  const date = values.word('date');
  const midnight = Date.parse(`${date}T00:00:00Z`);
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  if (new Date(midnight).getUTCDate() !== day) {
    return { ok: false, says: `there is no ${date} in the calendar.` };
  }
  const [h = 0, min = 0, s = 0] = values.word('time').split(':').map(Number);
  const localSeconds = midnight / 1000 + 3600 * h + 60 * min + s;
  const sun = sunPosition({ unixSeconds: localSeconds - 3600 * utcOffsetH, latDeg, lonDeg });
  const times = sunTimes({ year, month, day, latDeg, lonDeg, utcOffsetH });
  const clock = (unix: number | null) =>
    unix === null
      ? `the sun stays ${times.upAllDay ? 'up' : 'down'} all day`
      : clockTime(unix + 3600 * utcOffsetH);
  const degrees = (label: string, formula: string, value: number) => {
    return { label, formula, value, unit: 'deg' };
  };
  return {
    ok: true,
    steps: [
      degrees('declination d', 'almanac', sun.declinationDeg),
      degrees('hour angle w', 'sidereal time + lon - right ascension', sun.hourAngleDeg),
      degrees('elevation', 'asin(sin d sin lat + cos d cos lat cos w)', sun.elevationDeg),
      degrees('zenith', '90 - elevation', sun.zenithDeg),
    ],
    results: [
      { label: 'elevation above the horizon', value: sun.elevationDeg, unit: 'deg' },
      { label: 'bearing from north', value: sun.azimuthDeg, unit: 'deg' },
      { label: 'sunrise', value: clock(times.sunrise) },
      { label: 'highest', value: clock(times.transit) },
      { label: 'sunset', value: clock(times.sunset) },
    ],
  };
}

const clockTime = (localSeconds: number) =>
  new Date(Math.round(localSeconds / 60) * 60_000).toISOString().slice(11, 16);
