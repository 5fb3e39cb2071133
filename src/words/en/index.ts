import rules from '#compiled/words/en/rules.js';
import { formatQuantity, formatRange } from '../../quantity/format-quantity';
import type { Language } from '../language';
import { sayBillCheck } from './bill/say-bill-check';
import { sayCalibration } from './bill/say-calibration';
import { sayChanges } from './changes/say-changes';
import { sayOtherRoute } from './changes/say-other-route';
import { sayCite, sayCites } from './cites/say-cite';
import { sayContradiction } from './contradictions/say-contradiction';
import { forElectrician } from './electrical';
import { explain } from './explain';
import { sayOrigin } from './explain/say-origin';
import { firstSentence } from './first-sentence';
import { firstSentences } from './first-sentences';
import { form } from './form';
import { household } from './household';
import { sayShare } from './household/share';
import { sayJob } from './job/say-job';
import { sayLeaving, sayLeavings } from './leaving/say-leaving';
import { inSentence, listOf } from './list-of';
import { loadName, loadNames } from './load-names';
import { sayLoadName } from './loads/say-load-name';
import { sayBill } from './money/say-bill';
import { sayBillFit } from './money/say-bill-fit';
import { sayCarriesOver } from './money/say-carries-over';
import { sayCeilingNote } from './money/say-ceiling-note';
import { sayIncentive } from './money/say-incentive';
import { sayNoise } from './money/say-noise';
import { sayOldPrice } from './money/say-old-price';
import { sayPayback } from './money/say-payback';
import { sayRates } from './money/say-rates';
import { sayTariff } from './money/say-tariff';
import { sayUse } from './money/say-use';
import { months, shortMonths } from './months';
import { sayPart } from './parts/say-part';
import { sayPlace, sayPlaceBasis, sayPlaceWarning, sayStations } from './place/say-place';
import { quotes } from './quote';
import { sayReason } from './reasons/say-reason';
import { sayBasis } from './ride-through/say-basis';
import { sayFailsFirst } from './ride-through/say-fails-first';
import { sayNeighbor, sayOtherUse } from './ride-through/say-neighbor';
import { sayRouteTitle } from './routes/route-titles';
import { sayHowLong } from './routes/say-how-long';
import { sayIf } from './routes/say-if';
import { sayNote } from './routes/say-note';
import { range, usd } from './say-dollars';
import { sayFigure } from './say-figure';
import { sayFirstBuy } from './say-first-buy';
import { sayFuel } from './say-fuel';
import { sayGrownOld } from './say-grown-old';
import { sayHighEnd } from './say-high-end';
import { sayLeftOut } from './say-left-out';
import { sayLifeFirst } from './say-life-first';
import { sayMeasure, sayNotWhere, sayWhoMay } from './say-measures';
import { sayStop } from './say-stop';
import { sayTransferTime } from './say-transfer-time';
import { sayWhyAdvised } from './say-why-advised';
import { sayWhyNow } from './say-why-now';
import { sentenceCase } from './sentence-case';
import { sheets } from './sheets';
import { addOnBecause, addOnCost, addOnName } from './steps/say-add-on';
import { sayFuelToStore } from './steps/say-fuel-to-store';
import { sayStep } from './steps/say-step';
import { sayAssumption } from './sureness/say-assumption';
import { sayDecides } from './sureness/say-decides';
import { sayDraftReason, sayDraftReasonShort } from './sureness/say-draft-reason';
import { tariffInWords } from './tariff/tariff-in-words';
import { sayNoHeatAtNight } from './will-not-do/say-no-heat-at-night';
import { sayWillNot } from './will-not-do/say-will-not';

/** The English words. */
export const english = {
  language: 'en' as Language,
  rules,
  quantity: formatQuantity,
  range: formatRange,
  months,
  shortMonths,
  listOf,
  inSentence,
  sentenceCase,
  firstSentence,
  firstSentences,
  figure: sayFigure,
  origin: sayOrigin,
  cite: sayCite,
  cites: sayCites,
  usd,
  dollarRange: range,
  bill: sayBill,
  billFit: sayBillFit,
  contradiction: sayContradiction,
  rates: sayRates,
  payback: sayPayback,
  tariff: sayTariff,
  tariffInFull: tariffInWords,
  use: sayUse,
  ceilingNote: sayCeilingNote,
  incentive: sayIncentive,
  noise: sayNoise,
  oldPrice: sayOldPrice,
  carriesOver: sayCarriesOver,
  place: sayPlace,
  placeBasis: sayPlaceBasis,
  stations: sayStations,
  placeWarning: sayPlaceWarning,
  billCheck: sayBillCheck,
  calibration: sayCalibration,
  fuel: sayFuel,
  share: sayShare,
  transferTime: sayTransferTime,
  routeTitle: sayRouteTitle,
  part: sayPart,
  routeIf: sayIf,
  howLong: sayHowLong,
  routeNote: sayNote,
  reason: sayReason,
  leftOut: sayLeftOut,
  stop: sayStop,
  grownOld: sayGrownOld,
  highEnd: sayHighEnd,
  explain,
  lifeFirst: sayLifeFirst,
  leaving: sayLeaving,
  leavings: sayLeavings,
  job: sayJob,
  basis: sayBasis,
  failsFirst: sayFailsFirst,
  neighbor: sayNeighbor,
  otherUse: sayOtherUse,
  step: sayStep,
  fuelToStore: sayFuelToStore,
  addOn: { name: addOnName, because: addOnBecause, cost: addOnCost },
  willNotDo: sayWillNot,
  noHeatAtNight: sayNoHeatAtNight,
  called: sayLoadName,
  loadName,
  loadNames,
  changes: sayChanges,
  otherRoute: sayOtherRoute,
  household,
  forElectrician,
  form,
  sheets,
  quotes,
  measure: sayMeasure,
  notWhere: sayNotWhere,
  whoMay: sayWhoMay,
  whyAdvised: sayWhyAdvised,
  firstBuy: sayFirstBuy,
  whyNow: sayWhyNow,
  draftReason: sayDraftReason,
  draftReasonShort: sayDraftReasonShort,
  assumption: sayAssumption,
  decides: sayDecides,
};
