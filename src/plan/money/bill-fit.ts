import type { QuestionId } from '#compiled/question-ids.js';
import { type BillMatch, matchBill } from '../../bill/tariff/match-bill';
import type { Home } from '../../home/home';
import type { HomeTariff } from './tariff-of';

/** The bill as told held against the prices as told, to within 10 %. Null when either was not told. */
export function billFit(home: Home, homeTariff: HomeTariff): BillMatch | null {
  const { facts } = home;
  const told = (id: QuestionId) => (facts.told(id) ? facts.number(id) : null);
  const [kwh, dollars] = [told('bill-kwh'), told('bill-dollars')];
  if (!homeTariff.told || kwh === null || dollars === null) return null;
  return matchBill(homeTariff.tariff, { kwh, dollars, days: facts.number('bill-days') ?? 30 });
}
