import type { Held } from '../seen';
import {
  nobodyToCall,
  oneAddOnPrice,
  oneCountOfGallons,
  oneCountOfHours,
  oneCountOfThings,
  onePrice,
} from './agree';
import { fileAsPlanned, frontAsPlanned, frontInDetails, fuelOnce, partsAddUp } from './figures';
import { lifeBeforeBuying, lifeComplete, medicalCurve } from './life';
import { heldOfSheets } from './of-sheets';
import { pagesAsTexts } from './pages';
import { paneAsPlan } from './pane';
import { deadlyWhole, form, noControl, permits, soundFigures } from './papers';
import { batteryPlace, coldBattery, generatorPlace, wiring } from './places';
import { everyPaper, noHole } from './sheets';
import { electricalFigures, noIllness, unknownNeutral, unreadMain } from './wired';

/** What is held of every plan of every home, by name. */
export const held: Readonly<Record<string, Held>> = {
  'the form of the plan file': form,
  'sound figures in every paper': soundFigures,
  'sound electrical figures of every route': electricalFigures,
  'no control byte': noControl,
  'no generator without an open place': generatorPlace,
  'no battery where it may not stand': batteryPlace,
  'no charging in the cold unwarned': coldBattery,
  'nothing wired where it may not be': wiring,
  'life before buying': lifeBeforeBuying,
  'no complete plan without a second way': lifeComplete,
  'no electronics curve for a medical device': medicalCurve,
  'deadly cautions whole': deadlyWhole,
  'permits and cords': permits,
  'a neutral that is not known': unknownNeutral,
  'a main breaker that was not read': unreadMain,
  'no illness for the electrician': noIllness,
  'figures of the first page in the details': frontInDetails,
  'figures of the first page as planned': frontAsPlanned,
  'parts add up': partsAddUp,
  'one price in all papers': onePrice,
  'one count of hours in all papers': oneCountOfHours,
  'one count of things in all papers': oneCountOfThings,
  'one count of gallons in all papers': oneCountOfGallons,
  'one price of what stands beside': oneAddOnPrice,
  'nobody to call, and no work for one': nobodyToCall,
  'figures of the pages as their texts': pagesAsTexts,
  'hours with the cans filled': fuelOnce,
  'figures of the plan file as planned': fileAsPlanned,
  'the pane as the plan': paneAsPlan,
  ...heldOfSheets,
  'no hole in the summary': noHole,
  'every paper sound': everyPaper,
};
