import type { FiguredReason, Reason } from '../../../rules/reason';
import { plainReasons } from './plain-reasons';

/** Why a rule speaks: "You told us of a gas smell." */
export const sayReason = (reason: Reason): string =>
  typeof reason === 'string' ? plainReasons[reason] : sayFigured(reason);

function sayFigured(of: FiguredReason): string {
  switch (of.code) {
    case 'solar-over-battery':
      return `Solar of ${of.solarKw} kW meets a battery of ${of.batteryKw} kW.`;
    case 'hot-outdoors':
      return `It reaches ${of.hotF} °F outdoors where the battery would stand.`;
    case 'storage-over-limit':
      return `You have ${of.kwh} kWh, and ${of.limitKwh} kWh is common there.`;
    case 'fuel-over-limit':
      return `You would keep ${of.gallons} gallons, and ${of.limitGallons} is a common limit there.`;
    case 'goal-of-hours':
      return `You want to manage for ${of.hours} hours.`;
    case 'home-lies-high':
      return `Your home lies at about ${of.feet} ft.`;
    case 'main-over-bus':
      return `You read ${of.mainAmps} A on the main and ${of.busAmps} A on the panel's label.`;
    case 'charger-on-service':
      return `The car charger's breaker is ${of.chargerAmps} A on a ${of.mainAmps} A service.`;
    case 'room-on-bus':
      return `By the 120 percent sum a ${of.busAmps} A panel with a ${of.mainAmps} A main has room for ${of.roomAmps} A.`;
    case 'electric-heat-kw':
      return `There are ${of.kw} kW of electric heat here.`;
    case 'electric-heat-kw-maybe':
      return `There may be about ${of.kw} kW of electric heat here.`;
    case 'service-amps':
      return `The service is ${of.amps} A.`;
    case 'told-ill-from':
      return `You told us ${of.by} makes someone here ill.`;
    case 'not-known-ill-from':
      return `We do not know whether ${of.by} makes someone here ill.`;
    case 'more-risk-from':
      return `Someone here is at more risk from ${of.by}.`;
    case 'not-known-more-risk-from':
      return `We do not know whether someone here is at more risk from ${of.by}.`;
    case 'longest-over-goal':
      return `Your longest outage was ${of.longestHours} h, and the plan is for ${of.goalHours} h.`;
    case 'leave-in-hand':
      return `${sayReason(of.life)} With a trip of ${of.tripHours} h, leave with ${of.leaveHours} h in hand.`;
    case 'team-not-told':
      return `Still to be told: ${of.missing.join(', ').replaceAll('-', ' ')}.`;
    case 'few-short-outages':
      return `You had ${of.timesAYear} outages a year, the longest ${of.longestHours} h, and nobody here is at risk.`;
  }
}
