import type { BillReading } from './bill-reading';
import { exportFromBill } from './export-from-bill';
import { seasonsOf } from './in-season';
import type { Tariff, TariffSeason } from './tariff';
import { named } from './tariff-name';
import { withMoreLines } from './with-more-lines';

/** Holidays most plans without a holiday peak name. Common practice, no source. */
const usualHolidays = [
  'new-year',
  'memorial-day',
  'independence-day',
  'labor-day',
  'thanksgiving',
  'christmas',
] as const;

/** A tariff from what is printed on a bill; the household's words for what it leaves out. */
export function tariffFromBill(reading: BillReading): Tariff {
  const { energy, more } = reading;
  const seasons = energySeasons(energy);
  const tariff: Tariff = {
    name: named('from-bill'),
    ...(energy.kind === 'by-clock' && energy.holidaysOff && { holidays: usualHolidays }),
    fixed: reading.fixedPerMonth === null ? {} : { perMonth: reading.fixedPerMonth },
    seasons,
    ...(energy.kind === 'tiers' && { tierBasis: 'month' as const }),
    ...demandFromBill(reading),
    export: exportFromBill(reading, seasons),
    creditFloor: 'fixed',
  };
  return more === undefined ? tariff : withMoreLines(tariff, more);
}

function energySeasons(energy: BillReading['energy']): TariffSeason[] {
  if (energy.kind === 'by-clock') return seasonsOf(energy);
  const price = energy.kind === 'flat' ? energy.price : 0;
  const season = {
    name: named('all-year'),
    from: '01-01',
    to: '12-31',
    periods: [{ name: named('all-hours'), price }],
  };
  return [energy.kind === 'tiers' ? { ...season, tiers: energy.tiers } : season];
}

function demandFromBill({ demand }: BillReading): Pick<Tariff, 'demand'> {
  if (demand === null) return {};
  const { perKw, hours, ratchet, windowMinutes, rolling } = demand;
  const charge = {
    name: named('highest-use'),
    windowMinutes,
    ...(rolling && { rolling }),
    ...(hours && { days: 'weekdays' as const, hours }),
    prices: [{ from: '01-01', to: '12-31', perKw }],
    ...(ratchet && { ratchet }),
  };
  return { demand: [charge] };
}
