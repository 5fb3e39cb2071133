import { inverterHoursKwh, panelHoursKwh } from '../../physics/panel/panel-hours';
import { HOURS_PER_YEAR } from '../../physics/weather/calendar';
import { hourlyTemperatureC } from '../../physics/weather/hourly-temperature';
import { type Weather, weatherYears } from '../../physics/weather/weather-years';
import { LastUsed } from '../../quantity/last-used';
import { panelAssumption } from '../../tables/panel-figures';
import { persistenceFigures } from '../../tables/place/weather-persistence';
import type { Home, Load, Site } from '../home';
import { panelTraits, type Roof, roofOf } from '../solar/roof';
import { roofYear } from '../solar/roof-year';
import { followedHoursKw, followers, hourlyLoadKw, roomByDay } from './hourly-load';

/** Years of weather drawn for a plan, and the seed that gives the same ones again. */
export const WEATHER_YEARS = 100;
export const WEATHER_SEED = 20261125;

/** Years of days at a place, the same for the same seed. */
export function drawWeather({ place }: Site, years: number, seed = WEATHER_SEED): Weather {
  return weatherYears({
    climate: place.climate,
    persistence: persistenceFigures(place.climate),
    latDeg: place.latDeg,
    years,
    seed,
  });
}

/**
 * A hundred years of hours at this home: temperature, what the loads draw, what one kW of panels gives.
 * Each series is made on first use and kept. Hours count from 1 January, 8,760 a year, local standard time.
 */
export class SyntheticYears {
  readonly roof: Roof | null;
  private air: Float32Array | null = null;
  private sun: Float32Array | null = null;
  private dark: Float32Array | null = null;
  private room: Float64Array | null = null;
  private loads = new LastUsed<Map<number, Float32Array>>(MOST_SERIES);
  private followed = new LastUsed<Float32Array | null>(MOST_SERIES);
  private counts = new Map<string, unknown>();
  private lastSun: { readonly panelsKw: number; readonly kw: Float32Array } | null = null;

  constructor(
    private readonly home: Pick<Home, 'site' | 'facts'>,
    readonly years = WEATHER_YEARS,
    readonly seed = WEATHER_SEED,
    /** The weather of that place, years and seed where it was drawn before: it does not depend on the roof. */
    private readonly weather = drawWeather(home.site, years, seed),
  ) {
    this.roof = roofOf(home.facts);
  }

  /** The same days over another home at this place: what loads draw and what was counted is kept for both, not what the roof gives. */
  over(home: Pick<Home, 'site' | 'facts'>): SyntheticYears {
    const drawn = new SyntheticYears(home, this.years, this.seed, this.weather);
    drawn.air = this.airC();
    drawn.room = this.room;
    drawn.counts = this.counts;
    drawn.loads = this.loads;
    drawn.followed = this.followed;
    return drawn;
  }

  /**
   * What was counted over these hours with these loads, counted once for all homes of the place: small results, no series.
   * @param by whatever else the count rests on, names and numbers
   */
  counted<T>(
    loads: readonly Load[],
    by: readonly (string | number | boolean)[],
    count: () => T,
  ): T {
    const roof = this.roof === null ? '' : JSON.stringify(this.roof);
    const key = `${by.join(' ')} ${roof} ${loads.map(energyKey).join(' ')}`;
    const kept = this.counts.get(key);
    if (kept !== undefined) return kept as T;
    const made = count();
    if (this.counts.size >= MOST_COUNTS) this.counts.clear();
    this.counts.set(key, made);
    return made;
  }

  /** Outdoor temperature, C. */
  airC(): Float32Array {
    this.air ??= hourlyTemperatureC(this.weather);
    return this.air;
  }

  /** What these loads draw, kW, heating and cooling by the hour's temperature; of the first so many years where fewer are wanted. */
  loadKw(loads: readonly Load[], years = this.years): Float32Array {
    const hours = HOURS_PER_YEAR * Math.min(years, this.years);
    const key = loads.map(energyKey).join(' ');
    const lengths = this.loads.get(key) ?? new Map<number, Float32Array>();
    this.loads.set(key, lengths);
    const kept = lengths.get(hours);
    if (kept !== undefined) return kept;
    const longer = [...lengths.values()].find((kw) => kw.length > hours);
    const made = longer?.subarray(0, hours) ?? this.makeLoadKw(loads, hours);
    lengths.set(hours, made);
    return made;
  }

  private makeLoadKw(loads: readonly Load[], hours: number): Float32Array {
    this.room ??= roomByDay(this.airC());
    const known = { followedKw: this.followedKw(loads, hours), roomByDay: this.room };
    return hourlyLoadKw(loads, this.airC().subarray(0, hours), this.home.site.place.climate, known);
  }

  /** Heating and cooling by the hour are slow to work out, and many sets of loads share them. */
  private followedKw(loads: readonly Load[], hours: number): Float32Array | null {
    const key = followers(loads).map(energyKey).join(' ');
    const kept = this.followed.get(key);
    if (kept === null) return null;
    if (kept !== undefined && kept.length >= hours) return kept.subarray(0, hours);
    const { climate } = this.home.site.place;
    const made = followedHoursKw(loads, this.airC().subarray(0, hours), climate);
    this.followed.set(key, made);
    return made;
  }

  /** What panels of so many kW give in each hour, kW; zeros without panels or roof. Not to be written to: others read it too. */
  sunKw(panelsKw: number): Float32Array {
    const perKw = panelsKw > 0 ? this.sunKwhPerKw() : null;
    if (perKw === null) {
      this.dark ??= new Float32Array(this.years * HOURS_PER_YEAR);
      return this.dark;
    }
    if (this.lastSun?.panelsKw === panelsKw) return this.lastSun.kw;
    const kw = new Float32Array(perKw.length);
    for (let i = 0; i < kw.length; i++) kw[i] = perKw[i]! * panelsKw;
    this.lastSun = { panelsKw, kw };
    return kw;
  }

  /** Alternating-current kWh of each hour from one kW of panels on the roof; null without a roof. */
  sunKwhPerKw(): Float32Array | null {
    if (this.roof === null) return null;
    this.sun ??= this.makeSun(this.roof);
    return this.sun;
  }

  private makeSun(roof: Roof): Float32Array {
    const { place } = this.home.site;
    const clock = { lonDeg: place.lonDeg, utcOffsetH: place.utcOffsetH };
    const year = roofYear(this.weather.sky, roof.plane, clock);
    const hours = panelHoursKwh(this.weather, year, panelTraits(roof, place.climate.meanC));
    return inverterHoursKwh(hours, {
      ratedKw: 1 / panelAssumption('dcPerAcKw'),
      ratedEfficiency: panelAssumption('inverterEfficiency'),
      into: hours,
    });
  }
}

/** Counts kept before all are forgotten: a few questions with all their answers. */
const MOST_COUNTS = 2000;

/** Series of sets of loads kept: more than one home asks for, and with many homes of a place no more memory. */
const MOST_SERIES = 32;

const energyKeys = new WeakMap<Load, string>();

/** What the hours of a load depend on, as a text made once for each. */
function energyKey(load: Load): string {
  const known = energyKeys.get(load);
  if (known !== undefined) return known;
  const { id, runningWatts, kwhPerDay, shape, follows, heatsBy, awakeOnly, offInOutage } = load;
  const { winter, summer, mild } = kwhPerDay;
  const key = [
    ...[id, runningWatts.value, winter.value, summer.value, mild.value, shapeKey(shape)],
    ...[follows, heatsBy, awakeOnly, offInOutage],
  ].join(':');
  energyKeys.set(load, key);
  return key;
}

const shapeKeys = new WeakMap<readonly number[], string>();

/** Hours of the day as a short text, made once for each list. */
function shapeKey(shape: readonly number[]): string {
  const known = shapeKeys.get(shape);
  if (known !== undefined) return known;
  const key = shape.map((share) => Math.round(1e6 * share)).join(',');
  shapeKeys.set(shape, key);
  return key;
}
