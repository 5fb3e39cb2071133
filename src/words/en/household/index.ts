import { sayAboveTold, sayHighAbove } from './above-told';
import { advised } from './advised';
import { between } from './between';
import { cautions } from './cautions';
import { sayDanger } from './danger';
import { dollarsBuy } from './dollars-buy';
import { electrical } from './electrical';
import { frontPage } from './front-page';
import { fuelForGoal } from './fuel-for-goal';
import { hardCase } from './hard-case';
import { headings } from './headings';
import { healthFirst } from './health-first';
import { ladder } from './ladder';
import { loads } from './loads';
import { money } from './money';
import { openAnswers } from './open-answers';
import { possibleIf } from './possible-if';
import { reserve } from './reserve';
import { rideThrough } from './ride-through';
import { routes } from './routes';
import { sideBySide } from './side-by-side';
import { sureness } from './sureness';
import { thinPage } from './thin-page';
import { ways } from './ways';
import { waysOn } from './ways-on';
import { whatIsThere } from './what-is-there';
import { whatYouHave } from './what-you-have';

/** The summary for the household, part by part. */
export const household = {
  frontPage,
  thinPage,
  headings,
  money,
  sideBySide,
  between,
  reserve,
  electrical,
  danger: sayDanger,
  aboveTold: sayAboveTold,
  highAbove: sayHighAbove,
  dollarsBuy,
  waysOn,
  fuelForGoal,
  healthFirst,
  whatYouHave,
  loads,
  routes,
  possibleIf,
  advised,
  cautions,
  rideThrough,
  hardCase,
  ways,
  whatIsThere,
  ladder,
  openAnswers,
  sureness,
};
