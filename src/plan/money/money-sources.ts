import type { Home } from '../../home/home';
import { priceByState, statePrice } from '../../tables/prices/electricity-price';
import { equipmentCosts } from '../../tables/prices/equipment-costs';
import { fuelPrices } from '../../tables/prices/fuel-prices';
import { endedIncentives } from '../../tables/prices/incentives';
import { citeTable } from '../../tables/table';
import type { PlanMoney } from './plan-money';

const LIFE_CYCLE_CITE =
  'Life-cycle cost, payback and rate of return: NIST Handbook 135 (1995); ASTM E917, E1121 and E1057';
const RATE_CITE = 'Rate of 3 % a year above inflation: 10 CFR 436 (from memory, not re-read)';
const OUTAGES_CITE =
  'How often outages come and how long they last: EIA Electric Power Annual tables 11.1 and 11.3';
const LENGTHS_CITE = 'Outage lengths are lognormal: Ahmad & Dobson, arXiv 2603.16841 (2026)';
const WEAR_CITE =
  'Battery wear: price of cells and kWh through a warranty (from memory, not re-read)';
const CREDIT_CITE =
  'Credit for solar sent out: California Public Utilities Commission, decision D.22-12-056 (2022)';

/** What the money of a plan leans on: methods, tables and decisions, only those that were used. */
export function moneySources(home: Home, { tariff, routes }: PlanMoney): string[] {
  const burns = routes.some(({ ridden }) => ridden.fuelPerYear.likely > 0);
  const works = routes.some(({ between }) => between?.worthRunning === true);
  const guessesCredit =
    tariff !== null &&
    tariff.tariff.export.rule === 'net-billing' &&
    !home.facts.told('export-price') &&
    routes.some(({ between }) => between !== null && between.solarSavings > 0);
  return [
    LIFE_CYCLE_CITE,
    RATE_CITE,
    OUTAGES_CITE,
    LENGTHS_CITE,
    citeTable(equipmentCosts),
    citeTable(endedIncentives),
    ...(tariff !== null && !tariff.told ? [averagePriceSource(home)] : []),
    ...(burns ? [citeMemory(fuelPrices.source.title)] : []),
    ...(works ? [WEAR_CITE] : []),
    ...(guessesCredit ? [CREDIT_CITE] : []),
    ...((tariff?.tariff.holidays ?? []).length > 0 ? ['Holidays: 5 USC 6103(a)'] : []),
  ];
}

function averagePriceSource({ site }: Home): string {
  const { name, standing } = statePrice(site.state);
  return standing === 'memory'
    ? citeMemory(`Average price of a kWh in ${name}`)
    : citeTable(priceByState);
}

const citeMemory = (title: string) => `${title} (from memory, not re-read)`;
