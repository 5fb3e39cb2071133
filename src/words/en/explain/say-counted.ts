import type { Counted, Stores } from '../../../quantity/counted';
import { listOf } from '../list-of';
import { months as monthNames } from '../months';
import { exactly } from './exactly';

/** What was counted, over which starts, by which rule. */
export function sayCounted(counted: Counted): string {
  switch (counted.code) {
    case 'starts': {
      const { everyHours, months, years } = counted;
      const when = everyHours === 1 ? 'in every hour' : `in one of every ${everyHours} hours`;
      return `one begins ${when} of ${listOf(months.map((m) => monthNames[m]!))} in ${years} drawn years of weather`;
    }
    case 'ridden-through': {
      const { outageHours, careful, stores } = counted;
      const { generatorKw } = stores;
      const thirsty = generatorKw === null ? '' : ' and with a thirsty generator';
      const use = careful ? `at the high end of every use${thirsty}` : 'at likely use';
      return `counted hour by hour, ${use}: all ${outageHours} hours are fed in full${sayStores(stores)}`;
    }
    case 'middle-start':
      return `counted hour by hour from ${counted.starts.toLocaleString('en-US')} starts${sayStores(counted.stores)}, until the first hour that is not fed in full: half of them last longer`;
    case 'size-that-holds': {
      const { mostShare, givesWatts, runningWatts, startVa, startDemandVa } = counted;
      const whose = counted.isTheirs ? 'what you have' : 'a size that is sold';
      const share = mostShare === null ? '' : `${exactly(100 * mostShare, '%', 0)} of `;
      return `${whose}; it runs ${exactly(runningWatts, 'W', 0)} on no more than ${share}the ${exactly(givesWatts, 'W', 0)} it gives here, and starts ${exactly(startDemandVa, 'VA', 0)} with the ${exactly(startVa, 'VA', 0)} it lends for a moment`;
    }
    case 'middle-hour':
      return `counted hour by hour over the same hard day again and again${sayStores(counted.stores)}, from each of its 24 hours: half of them last longer`;
  }
}

function sayStores({ usableKwh, solarKw, generatorKw, fuel }: Stores): string {
  const parts = [
    usableKwh === null ? '' : `a full battery of ${exactly(usableKwh, 'kWh', 2)}`,
    solarKw === null ? '' : `${exactly(solarKw, 'kW', 1)} of panels`,
    generatorKw === null ? '' : `a generator that gives ${exactly(generatorKw, 'kW', 2)} here`,
    fuel === null ? '' : `${exactly(fuel.amount, fuel.unit, 1)} of fuel`,
  ].filter(Boolean);
  return parts.length === 0 ? '' : `, with ${listOf(parts)}`;
}
