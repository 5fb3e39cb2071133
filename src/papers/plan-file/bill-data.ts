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
    bill: figureData(billCheck.billKwhPerDay, words),
    loads: figureData(billCheck.loadsKwhPerDay, words),
    season: billCheck.season,
  };
}

export function billYearData({ home: { billYear } }: Plan, words: Words): PlanData['billYear'] {
  const figures = billYear === null ? null : billYearFigures(billYear);
  if (figures === null) return null;
  const { monthsKwh, ...split } = figures;
  const data = {
    anyWeather: figureData(split.anyWeather, words),
    withCold: figureData(split.withCold, words),
    withHeat: figureData(split.withHeat, words),
    misfit: figureData(split.misfit, words),
    explained: figureData(split.explained, words),
  };
  return { monthsKwh: monthsKwh.map(round), ...data };
}
