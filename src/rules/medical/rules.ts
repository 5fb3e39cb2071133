import type { Rule } from '../rule';
import { alarmButton } from './alarm-button';
import { aloneCheck } from './alone-check';
import { cleanPower } from './clean-power';
import { cpapNights } from './cpap-nights';
import { cylinderHours } from './cylinder-hours';
import { deviceBatteryUntested } from './device-battery-untested';
import { deviceGap } from './device-gap';
import { dialysisPlan } from './dialysis-plan';
import { doorRelease } from './door-release';
import { heartPump } from './heart-pump';
import { helpToLeave } from './help-to-leave';
import { leavingPoint } from './leaving-point';
import { liftStops } from './lift-stops';
import { listIsNotice } from './list-is-notice';
import { maskSecondWay } from './mask-second-way';
import { medicineCool } from './medicine-cool';
import { modifiedSine } from './modified-sine';
import { noPlaceToGo } from './no-place-to-go';
import { oxygenFire } from './oxygen-fire';
import { placeMayBeDark } from './place-may-be-dark';
import { planIsPrivate } from './plan-is-private';
import { powerChair } from './power-chair';
import { rehearsalLifeDevice } from './rehearsal-life-device';
import { safeHours } from './safe-hours';
import { secondSource } from './second-source';
import { tellTheTeam } from './tell-the-team';
import { ventilatorBag } from './ventilator-bag';

/** Health devices, medicine and getting people out, in printing order. */
export const medicalRules: readonly Rule[] = [
  secondSource,
  leavingPoint,
  safeHours,
  deviceGap,
  heartPump,
  ventilatorBag,
  oxygenFire,
  cylinderHours,
  deviceBatteryUntested,
  listIsNotice,
  rehearsalLifeDevice,
  liftStops,
  medicineCool,
  cleanPower,
  modifiedSine,
  dialysisPlan,
  tellTheTeam,
  powerChair,
  doorRelease,
  helpToLeave,
  noPlaceToGo,
  placeMayBeDark,
  alarmButton,
  maskSecondWay,
  cpapNights,
  aloneCheck,
  planIsPrivate,
];
