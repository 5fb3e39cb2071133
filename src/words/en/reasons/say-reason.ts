import type { FiguredReason, Reason } from '../../../rules/reason';
import { plainReasons } from './plain-reasons';

/** Why a rule speaks: "You told us of a gas smell." */
export const sayReason = (reason: Reason): string =>
  typeof reason === 'string' ? plainReasons[reason] : sayFigured(reason);

function sayFigured(reason: FiguredReason): string {
  switch (reason.code) {
    case 'solar-over-battery':
      return `Solar of ${reason.solarKw} kW meets a battery of ${reason.batteryKw} kW.`;
    case 'hot-outdoors':
      return `It reaches ${reason.hotF} °F outdoors where the battery would stand.`;
    case 'storage-over-limit':
      return `You have ${reason.kwh} kWh, and ${reason.limitKwh} kWh is common there.`;
    case 'fuel-over-limit':
      return `You would keep ${reason.gallons} gallons, and ${reason.limitGallons} is a common limit there.`;
    case 'goal-of-hours':
      return `You want to manage for ${reason.hours} hours.`;
    case 'home-lies-high':
      return `Your home lies at about ${reason.feet} ft.`;
    case 'main-over-bus':
      return `You read ${reason.mainAmps} A on the main and ${reason.busAmps} A on the panel's label.`;
    case 'charger-on-service':
      return `The car charger's breaker is ${reason.chargerAmps} A on a ${reason.mainAmps} A service.`;
    case 'room-on-bus':
      return `By the 120 percent sum a ${reason.busAmps} A panel with a ${reason.mainAmps} A main has room for ${reason.roomAmps} A.`;
    case 'electric-heat-kw':
      return `There are ${reason.kw} kW of electric heat here.`;
    case 'electric-heat-kw-maybe':
      return `There may be about ${reason.kw} kW of electric heat here.`;
    case 'service-amps':
      return `The service is ${reason.amps} A.`;
    case 'told-ill-from':
      return `You told us ${reason.by} makes someone here ill.`;
    case 'not-known-ill-from':
      return `We do not know whether ${reason.by} makes someone here ill.`;
    case 'more-risk-from':
      return `Someone here is at more risk from ${reason.by}.`;
    case 'not-known-more-risk-from':
      return `We do not know whether someone here is at more risk from ${reason.by}.`;
    case 'longest-over-goal':
      return `Your longest outage was ${reason.longestHours} h, and the plan is for ${reason.goalHours} h.`;
    case 'leave-in-hand':
      return `${sayReason(reason.life)} With a trip of ${reason.tripHours} h, leave with ${reason.leaveHours} h in hand.`;
    case 'team-not-told':
      return `Still to be told: ${reason.missing.join(', ').replaceAll('-', ' ')}.`;
    case 'few-short-outages':
      return `You had ${reason.timesAYear} outages a year, the longest ${reason.longestHours} h, and nobody here is at risk.`;
  }
}
