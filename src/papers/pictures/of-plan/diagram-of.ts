import { hasFixedGenerator, hasPortableGenerator, isWired } from '../../../kinds/ask-traits';
import { traitsOf } from '../../../kinds/route-traits';
import { thereAlready } from '../../../plan/electrical/there-already';
import type { Plan } from '../../../plan/plan';
import type { EquipmentClass } from '../../../tables/prices/equipment-costs';
import type { Words } from '../../../words/words';
import { type Device, oneLinePicture } from '../one-line';
import type { Picture } from '../picture';

type Unit = 'kW' | 'kWh';

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
  const own = thereAlready(route);
  const { sized, sizedWith, told } = words.sheets.devices;
  /** The size planned, with what is there in it where more is bought; what is on the label where nothing is. */
  const size = (planned: number | null, label: number | null, buys: boolean, unit: Unit) =>
    label !== null && !buys
      ? told(words.quantity(label, unit))
      : planned === null
        ? ''
        : label === null
          ? sized(words.quantity(planned, unit))
          : sizedWith(words.quantity(planned, unit), words.quantity(label, unit));
  const generator = size(route.generator?.ratedKw ?? null, own.generatorKw, false, 'kW');
  const battery: Device = {
    name: words.sheets.devices.battery,
    known: size(route.usableKwh, own.batteryKwh, own.buys.battery, 'kWh'),
    there: own.batteryKwh !== null && !own.buys.battery,
  };
  const solar: Device | null =
    route.solarKw === null
      ? null
      : {
          name: words.sheets.devices.solar,
          known: size(route.solarKw, own.solarKw, own.buys.solar, 'kW'),
          there: own.solarKw !== null && !own.buys.solar,
        };
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
      [
        ...top,
        {
          ...added(words.sheets.devices.automatic),
          there: own.generatorKw !== null && !has('automatic-transfer'),
        },
        there(words.sheets.devices.panel),
        ...down,
      ],
      [
        {
          at: 2,
          chain: [
            { ...added(words.sheets.devices.fixed, generator), there: own.generatorKw !== null },
          ],
        },
      ],
    );
  const refill = hasPortableGenerator(of) ? [added(words.sheets.devices.charger), portable] : [];
  return picture(
    [
      ...top,
      added(words.sheets.devices.transfer),
      { ...added(words.sheets.devices.backedUp), there: of.owned && !has('backup-subpanel') },
      ...down,
    ],
    [
      {
        at: 2,
        chain: [
          added(words.sheets.devices.disconnect),
          battery,
          ...(solar === null ? refill : [solar]),
        ],
      },
    ],
  );
}
