import type { LoadId } from '../../home/loads/load-id';
import { hasFixedBattery, hasGenerator, isPack, isSource } from '../../kinds/ask-traits';
import { type RouteTraits, traitsOf } from '../../kinds/route-traits';
import { type HandStep, handSteps } from '../../plan/on-the-day/hand-steps';
import { lastingToPrint } from '../../plan/on-the-day/lasting-to-print';
import { mayHaveGas } from '../../plan/on-the-day/may-have-gas';
import type { Plan } from '../../plan/plan';
import { LENGTHS } from '../../plan/ride-through/lengths';
import type { Finding } from '../../rules/rule';
import { sayRule } from '../../words/rule-sentences';
import type { Words } from '../../words/words';
import { section } from '../document/block';
import { thriftItHangsOn } from '../household/front/say-thriftily';
import { forTheNight } from './cautions-on-sheets';
import { dangerBlocks } from './danger-blocks';
import { draftMark } from './draft-mark';
import { leavingOnTheNight } from './leaving-on-the-night';
import { shortReading } from './reading';
import type { Sheet } from './sheet';

/** The sheet for the night itself: what kills, where things are, what to do in which order, when to leave. No ranges. */
export function fridgeSheet(plan: Plan, words: Words): Sheet {
  const { route } = plan.advice;
  const traits = traitsOf[route.kind];
  const { start, back } = handSteps(traits, plan.home, isOnGasLine(plan));
  const kills = forTheNight(plan, words);
  const said = sayingSteps(plan, kills, words);
  return {
    id: 'fridge',
    title: words.sheets.fridge.title,
    purpose: words.sheets.fridge.purpose,
    blocks: [
      ...dangerBlocks(plan, words),
      ...draftMark(plan, words.sheets.fridge.draft),
      ...section(words.sheets.fridge.kills, {
        kind: 'bullets',
        items: kills.map((one) => onTheNight(one, words)),
      }),
      ...section(words.sheets.fridge.leave, {
        kind: 'bullets',
        items: leavingOnTheNight(plan.leavingPoint, kills, words),
      }),
      ...section(
        words.sheets.fridge.start,
        { kind: 'say', text: lasts(plan, words).join(' ') },
        { kind: 'steps', items: said(start), boxes: true },
      ),
      ...section(words.sheets.fridge.off, {
        kind: 'bullets',
        items: isSource(traits) ? rungs(plan, words) : [],
      }),
      ...section(words.sheets.fridge.back, { kind: 'steps', items: said(back), boxes: true }),
      ...section(words.sheets.fridge.call, {
        kind: 'blanks',
        names: [...callNames(plan, words), ...whereNames(plan, words)],
      }),
    ],
  };
}

/** How long it lasts by the careful count alone, named so. */
function lasts(plan: Plan, words: Words): string[] {
  const { route } = plan.advice;
  if (!isSource(traitsOf[route.kind])) return [words.sheets.fridge.none];
  const span = (h: number) => words.quantity(Math.round(h), 'h');
  const last = lastingToPrint(plan).at(-1);
  const own =
    last === undefined
      ? [words.sheets.fridge.whileGas]
      : last.storedGallons === null
        ? [words.sheets.fridge.careful(span(last.carefulHours))]
        : [
            words.sheets.fridge.carefulFull(
              span(last.carefulHours),
              words.quantity(last.storedGallons, 'gal'),
            ),
          ];
  const thrift = thriftItHangsOn(plan, words);
  if (thrift !== null) own.push(words.sheets.fridge.thriftily(thrift));
  const covered = plan.healthFirst?.covered ?? null;
  if (plan.healthFirst === null || covered === null) return own;
  const names = plan.healthFirst.carried.map((id) => deviceName(plan, id, words));
  const alone =
    covered.carefulHours >= LENGTHS.at(-1)!
      ? words.sheets.reading.twoWeeks
      : span(covered.carefulHours);
  return [...own, words.sheets.fridge.devices(words.sentenceCase(words.listOf(names)), alone)];
}

function deviceName({ home }: Plan, id: LoadId, words: Words): string {
  return words.inSentence(words.loadName(home, id));
}

/** The steps in words, each thing said once: motors in their order, and no distance that stands above already. */
function sayingSteps(plan: Plan, kills: readonly Finding[], words: Words) {
  const motors = motorsInOrder(plan);
  const order = motors.length < 2 ? null : words.listOf(motors.map((id) => lower(plan, id, words)));
  const above = kills.some(({ id }) => id === 'co-distance');
  return (steps: readonly HandStep[]) =>
    steps.map((step) => {
      if (step === 'generator-to-its-place' && above) return words.sheets.fridge.placeAsAbove;
      if (step === 'one-at-a-time' && motors.length === 0) return words.sheets.fridge.noMotor;
      const says = words.sheets.handSteps[step];
      return order !== null && switchesOn.has(step) ? words.sheets.fridge.order(says, order) : says;
    });
}

/** The motors in the order in which they are switched on. */
const motorsInOrder = ({ electrical, advice }: Plan): readonly LoadId[] =>
  electrical.starting.find((one) => one.route === advice.route.kind)?.order ?? [];

const lower = ({ home }: Plan, id: LoadId, words: Words) =>
  words.inSentence(words.loadName(home, id));

/** Piped gas or a propane tank feeds it through a line: no cans and no cylinders to fill. */
function isOnGasLine({ advice: { route }, home }: Plan): boolean {
  if (route.fuel === null) return false;
  return (
    route.fuel.atHand === null ||
    (route.fuel.fuel === 'propane' && home.facts.is('gas-supply', 'propane-tank'))
  );
}

/** The steps by which motors come on. */
const switchesOn: ReadonlySet<HandStep> = new Set(['branches-one-by-one', 'one-at-a-time']);

/** Short where it was written for the night, and not only for want of an answer; else whole. */
function onTheNight(one: Finding, words: Words): string {
  return (one.careful ? undefined : words.sheets.night[one.id]) ?? sayRule(words.rules, one);
}

/** What goes off at each reading; several that read the same, as with piped gas, stand in their order after it. */
function rungs(plan: Plan, words: Words): string[] {
  const byReading = new Map<string, string[]>();
  for (const step of plan.ladder) {
    const name = (id: LoadId) => words.inSentence(words.loadName(plan.home, id));
    const does = words.sheets.fridge.rung(step.switchOff.map(name), step.lessens.map(name));
    const reading = shortReading(plan, step.atPercent, words);
    byReading.set(reading, [...(byReading.get(reading) ?? []), does]);
  }
  return [...byReading].map(
    ([reading, does]) => `${reading}: ${does.join(words.sheets.fridge.stillSo)}.`,
  );
}

function whereNames({ advice, home }: Plan, words: Words): string[] {
  const { main, gas, water, source, fuel, lights, medicine } = words.sheets.fridge.whereNames;
  const traits = traitsOf[advice.route.kind];
  return [
    main,
    ...(mayHaveGas(home) ? [gas] : []),
    water,
    ...sourcesOf(traits).map((kind) => source[kind]),
    ...(hasGenerator(traits) && advice.route.fuel?.atHand != null ? [fuel] : []),
    lights,
    ...(home.facts.told('medical-devices') && !home.facts.has('medical-devices', 'none')
      ? [medicine]
      : []),
  ];
}

/** What gives the power and has to be found in the dark; a fixed generator and its battery stand apart. */
function sourcesOf(traits: RouteTraits): ('generator' | 'battery' | 'pack' | 'vehicle')[] {
  return [
    ...(hasGenerator(traits) ? (['generator'] as const) : []),
    ...(hasFixedBattery(traits) ? (['battery'] as const) : []),
    ...(isPack(traits) ? (['pack'] as const) : []),
    ...(traits.vehicle ? (['vehicle'] as const) : []),
  ];
}

function callNames({ home, electricianFor, healthFirst, lifeFirst }: Plan, words: Words): string[] {
  const { emergency, power, gas, electrician, clinician, neighbor, place } =
    words.sheets.fridge.callNames;
  return [
    emergency,
    power,
    ...(mayHaveGas(home) ? [gas] : []),
    ...(electricianFor === 'nothing' ? [] : [electrician]),
    ...(healthFirst === null && lifeFirst === null ? [] : [clinician]),
    neighbor,
    place,
  ];
}
