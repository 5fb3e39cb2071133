import type { Home } from '../../home/home';
import type { Cite } from '../../quantity/cite';
import { priceByState, statePrice } from '../../tables/prices/electricity-price';
import { equipmentCosts } from '../../tables/prices/equipment-costs';
import { fuelPrices } from '../../tables/prices/fuel-prices';
import { endedIncentives } from '../../tables/prices/incentives';
import { citeTable } from '../../tables/table';
import type { PlanMoney } from './plan-money';

const LIFE_CYCLE_CITE: Cite = [
  {
    of: 'for-life-cycle-cost',
    ref: 'NIST Handbook 135 (1995); ASTM E917, E1121 and E1057',
  },
];
const RATE_CITE: Cite = [
  { of: 'rate-above-inflation', ref: '10 CFR 436' },
  'from-memory-not-re-read',
];
const OUTAGES_CITE: Cite = [
  { of: 'how-often-outages-come', ref: 'EIA Electric Power Annual tables 11.1 and 11.3' },
];
const LENGTHS_CITE: Cite = [
  { of: 'outage-lengths-lognormal', ref: 'Ahmad & Dobson, arXiv 2603.16841 (2026)' },
];
const WEAR_CITE: Cite = ['battery-wear', 'from-memory-not-re-read'];
const CREDIT_CITE: Cite = [
  {
    of: 'credit-for-solar-sent-out',
    ref: 'California Public Utilities Commission, decision D.22-12-056 (2022)',
  },
];
const HOLIDAYS_CITE: Cite = [{ of: 'holidays', ref: '5 USC 6103(a)' }];

/** What the money of a plan leans on: methods, tables and decisions, only those that were used. */
export function moneySources(home: Home, { tariff, routes }: PlanMoney): Cite[] {
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
    ...(burns ? [citeTable(fuelPrices)] : []),
    ...(works ? [WEAR_CITE] : []),
    ...(guessesCredit ? [CREDIT_CITE] : []),
    ...((tariff?.tariff.holidays ?? []).length > 0 ? [HOLIDAYS_CITE] : []),
  ];
}

function averagePriceSource({ site }: Home): Cite {
  const { name, standing } = statePrice(site.state);
  return standing === 'memory' ? [{ averagePriceIn: name }] : citeTable(priceByState);
}
