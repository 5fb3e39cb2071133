import type { QuestionId } from '#compiled/question-ids.js';
import type { Facts } from '../home/facts';
import type { Load, Site } from '../home/home';
import { drawWeather, WEATHER_SEED, World } from '../home/world';
import { hoursSurvived } from '../outage/hours-survived';
import { quantileInPlace } from '../outage/quantile';
import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import type { Weather } from '../physics/weather/weather-years';
import { formatQuantity } from '../quantity/format-quantity';
import { LIMIT_HOURS, netOf } from '../routes/battery-hours';

/** Few years are enough for a line that moves while the interview runs. */
const YEARS = 10;
/** The battery the line speaks of, as bought and as used at a usual depth, and the power it gives. */
const BATTERY = { nameplateKwh: 10, usableKwh: 9, kw: 7.6 };
/** At most this much of the roof is thought to be covered. */
const MOST_SOLAR_KW = 5;
const JANUARY_HOURS = 31 * 24;

/**
 * "In a dark January week a 10 kWh battery would last about 22 h": the time that one in ten outages starting in
 * January falls short of, from a few drawn years. Weather is drawn once for each place, its sun once for each roof.
 */
export function januaryWeek(): (facts: Facts, site: Site, must: readonly Load[]) => string | null {
  const weathers = new Map<string, Weather>();
  const worlds = new Map<string, World>();
  return (facts, site, must) => {
    if (must.length === 0) return null;
    const placeKey = keyOf(facts, ['home-zip', 'home-elevation']);
    const weather = weathers.get(placeKey) ?? drawWeather(site, YEARS);
    weathers.set(placeKey, weather);
    const key = `${placeKey} ${keyOf(facts, ['roof-face', 'roof-shade', 'roof-area'])}`;
    const world = worlds.get(key) ?? new World({ facts, site }, YEARS, WEATHER_SEED, weather);
    worlds.set(key, world);
    const room = world.roof?.roomKw ?? 0;
    const solarKw = room >= 1 ? Math.min(MOST_SOLAR_KW, Math.floor(room)) : 0;
    const net = netOf(world, must, BATTERY.kw, solarKw);
    const hours = hoursSurvived({
      netKwh: net,
      capKwh: BATTERY.usableKwh,
      limitHours: LIMIT_HOURS,
    });
    const january = hours.filter((_, hour) => hour % HOURS_PER_YEAR < JANUARY_HOURS);
    const lasts = quantileInPlace(january, 0.1) ?? 0;
    const sun = solarKw > 0 ? ` with ${formatQuantity(solarKw, 'kW')} of solar` : '';
    const said =
      lasts >= LIMIT_HOURS
        ? 'two weeks or more'
        : `about ${formatQuantity(Math.round(lasts), 'h')}`;
    return `In a dark January week a ${BATTERY.nameplateKwh} kWh battery${sun} would last ${said}.`;
  };
}

function keyOf(facts: Facts, questions: readonly QuestionId[]): string {
  return questions.map((id) => String(facts.value(id))).join(' ');
}
