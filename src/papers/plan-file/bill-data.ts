import { billYearFigures } from '../../plan/bill-year-figures';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { figureData, round } from './figure-data';
import type { PlanData } from './plan-schema';

export function billData({ billCheck }: Plan, words: Words): PlanData['billCheck'] {
  const says = words.billCheck(billCheck);
  if (billCheck.verdict === 'not-possible') {
    return { verdict: billCheck.verdict, code: billCheck.because, says };
  }
  return {
    verdict: billCheck.verdict,
    code: billCheck.code,
    says,
    bill: figureData(billCheck.billKwhPerDay),
    loads: figureData(billCheck.loadsKwhPerDay),
    season: billCheck.season,
  };
}

export function billYearData({ home: { billYear } }: Plan): PlanData['billYear'] {
  const figures = billYear === null ? null : billYearFigures(billYear);
  if (figures === null) return null;
  const { monthsKwh, ...split } = figures;
  const data = {
    anyWeather: figureData(split.anyWeather),
    withCold: figureData(split.withCold),
    withHeat: figureData(split.withHeat),
    misfit: figureData(split.misfit),
    explained: figureData(split.explained),
  };
  return { monthsKwh: monthsKwh.map(round), ...data };
}
