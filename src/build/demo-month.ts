// Test month for the demo tariffs: hourly load and solar of a house, kWh, hours 0 to 23. Invented figures.
import { monthDays } from '../bill/bill-days';

export const load = [
  0.7, 0.6, 0.6, 0.6, 0.6, 0.7, 1, 1.3, 1.2, 1, 1, 1, 1.1, 1.1, 1.2, 1.4, 1.8, 2.2, 2.4, 2.3, 2.1,
  1.8, 1.3, 1,
];
export const solar = [
  0, 0, 0, 0, 0, 0, 0.2, 0.8, 1.8, 2.8, 3.6, 4.1, 4.3, 4.2, 3.7, 3, 2, 1, 0.3, 0, 0, 0, 0, 0,
];

/** A month of 2025 with the load 1.1 times on weekends; January and July both have 23 weekdays. */
export function demoMonth(month: number, { withSolar }: { withSolar: boolean }) {
  const days = monthDays(2025, month);
  const net = days.flatMap(({ weekday }) => {
    const scale = weekday === 0 || weekday === 6 ? 1.1 : 1;
    return load.map((kwh, h) => kwh * scale - (withSolar ? solar[h]! : 0));
  });
  return {
    days,
    importKwh: net.map((n) => Math.max(0, n)),
    exportKwh: net.map((n) => Math.max(0, -n)),
  };
}
