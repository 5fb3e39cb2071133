import { hasFixedGenerator, hasPortableGenerator, isWired } from '../../../kinds/ask-traits';
import { traitsOf } from '../../../kinds/route-traits';
import type { Plan } from '../../../plan/plan';
import type { EquipmentClass } from '../../../tables/prices/equipment-costs';
import type { Words } from '../../../words/words';
import { type Device, oneLinePicture } from '../one-line';
import type { Picture } from '../picture';

/** The one-line diagram of a wired route by its traits; null where nothing is wired. */
export function diagramOf({ advice: { route }, home }: Plan, words: Words): Picture | null {
  const of = traitsOf[route.kind];
  if (!isWired(of)) return null;
  const has = (equipment: EquipmentClass) =>
    route.parts.some((part) => part.equipmentClass === equipment && part.costUsd.high > 0);
  const there = (name: string, known = ''): Device => ({ name, known, there: true });
  const added = (name: string, known = ''): Device => ({
    name,
    known,
    there: of.owned,
  });
  const amps = home.facts.told('main-amps')
    ? words.sheets.devices.amps(words.quantity(home.facts.number('main-amps')!, 'A'))
    : '';
  const generator =
    route.generator === null
      ? ''
      : words.sheets.devices.sized(words.quantity(route.generator.ratedKw, 'kW'));
  const battery =
    route.usableKwh === null
      ? ''
      : words.sheets.devices.sized(words.quantity(Math.round(route.usableKwh * 10) / 10, 'kWh'));
  const solar =
    route.solarKw === null
      ? null
      : added(
          words.sheets.devices.solar,
          words.sheets.devices.sized(words.quantity(route.solarKw, 'kW')),
        );
  const portable: Device = {
    name: words.sheets.devices.portable,
    known: generator,
    there: !has('portable-engine'),
  };
  const feeds = of.vehicle ? there(words.sheets.devices.vehicle) : portable;
  const inlet = (name: string): Device => ({
    ...added(name),
    there: !has('inlet-interlock') && !has('manual-transfer'),
  });
  const top = [there(words.sheets.devices.meter), there(words.sheets.devices.main, amps)];
  const down = [there(words.sheets.devices.circuits)];
  const picture = (spine: Device[], joins: { at: number; chain: Device[] }[]) =>
    oneLinePicture(
      { spine, joins },
      words.sheets.pictures.diagram(words.inSentence(words.routeTitle(route.called))),
    );
  if (of.connection === 'inlet')
    return picture(
      [
        ...top,
        inlet(
          of.vehicle || has('manual-transfer')
            ? words.sheets.devices.transfer
            : words.sheets.devices.interlock,
        ),
        ...down,
      ],
      [{ at: 2, chain: [inlet(words.sheets.devices.inlet), feeds] }],
    );
  if (hasFixedGenerator(of))
    return picture(
      [...top, added(words.sheets.devices.automatic), there(words.sheets.devices.panel), ...down],
      [{ at: 2, chain: [added(words.sheets.devices.fixed, generator)] }],
    );
  const refill = hasPortableGenerator(of) ? [added(words.sheets.devices.charger), portable] : [];
  return picture(
    [...top, added(words.sheets.devices.transfer), added(words.sheets.devices.backedUp), ...down],
    [
      {
        at: 2,
        chain: [
          added(words.sheets.devices.disconnect),
          added(words.sheets.devices.battery, battery),
          ...(solar === null ? refill : [solar]),
        ],
      },
    ],
  );
}
