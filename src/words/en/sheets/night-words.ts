import type { LeavingLine } from '../../../plan/leaving-point';
import type { RuleId } from '../../../tables/rules';

/**
 * What kills, said for somebody who stands in the dark: what it is, and all that is to be done about it on the night. A
 * caution that is not here stands whole; what has to be mended beforehand stands whole on the family's sheet and in the
 * details. Every distance, temperature and number to call of the whole caution stands here too.
 */
export const nightWords: Readonly<Partial<Record<RuleId, string>>> = {
  'gas-smell':
    'Smell gas? Go out at once, leave every switch as it is. Call the gas company or 911 from a distance. Go near no generator, and say so if one here can start by itself.',
  'co-signs':
    'Headache, dizziness or an alarm: it can be carbon monoxide. All out into fresh air, call 911 from there, and go back in for nothing.',
  'hot-panel':
    'A panel, outlet or switch that is hot, buzzes or shows burns: do not touch it. Switch things off at their own switches, call an electrician today. Smoke? Go out and call 911.',
  'water-and-electricity':
    'Water near a panel, outlet or battery can kill. Keep out of it, and let the power company cut the power from outside. An electrician checks what got wet before it is used again.',
  'backfeed-found':
    'Never use the cord with a plug on both ends: it kills. Cut it in two. Only an inlet with a listed transfer switch or interlock, fitted by an electrician, feeds the house.',
  'no-backfeed':
    'Never feed the house through a wall or dryer outlet: it kills. Plug things straight into the source, or use an inlet with listed transfer equipment that an electrician fitted.',
  'porch-carport':
    'A porch, carport, garage, shed, balcony or the space under a home traps the gas, also with the door open. The generator stands on open ground, even when it rains.',
  'apartment-no-engine':
    'No generator in an apartment, on a balcony, on the roof or by the wall: its gas reaches you and the neighbors. Use a battery, or go to a place with power.',
  'engine-too-close':
    "The place you have is too near the house for a generator: open ground, 20 feet or more from every opening, the neighbors' too. None? Use a battery or go elsewhere.",
  'co-distance':
    "A running generator makes carbon monoxide, which kills in minutes. Outdoors, 20 feet or more from every door, window and vent, the neighbors' too; exhaust away, windows there shut.",
  'hybrid-starts-itself':
    'A hybrid left on starts its engine by itself. Never in a garage or carport or by a window, even with the door open: park outdoors, 20 feet from every opening, tailpipe away and clear of snow.',
  'charcoal-indoors':
    'Charcoal, grills and camp stoves outside only, away from doors and windows: indoors they kill, even in a fireplace or a garage. Eat what needs no cooking.',
  'oven-heat':
    'Never heat with an oven, a stove top, a grill or a burner with no chimney: its gas has no smell and kills. One warm room, warm clothes, or a place to go.',
  'gas-leak-self-start':
    'Smell gas? Go out, stay away from the generator, tell 911 or the gas company: it may start by itself and set the gas off.',
  'battery-smoke':
    'A battery smokes, hisses, swells or gets very hot: out, door shut behind you, call 911 and say it is a battery. Do not open to look: the gas can explode. Stay away.',
  'flood-go':
    'The water rises: people, medicine, device batteries, go, also with the power on. Skip every other chore. Never drive through water.',
  'wildfire-go':
    'Told to go? Go now. Stop the generator and shut its fuel only if that takes less than a minute on your way. Stay for nothing. Leave some lights on for the crews.',
  'co-alarm-first':
    'A carbon monoxide alarm with a battery on every floor and outside the bedrooms, or no generator and no fire for heat. A shut-off does not replace it. It sounds? Go out, call 911.',
  'fallen-wire':
    'A wire on the ground may be live, and so may what it touches. Stay 35 feet away or more, keep others back, call 911 and the power company. One falls on your car? Stay in, and call, unless it burns.',
};

/** When to leave, said for the night; a line that is not here stands as in the details. */
export const nightLeaving: Readonly<Partial<Record<LeavingLine['code'], string>>> = {
  'co-alarm': 'A carbon monoxide alarm, a headache, dizziness: out into fresh air and call 911.',
  'room-limits':
    'The room stays below 60 °F and cannot be warmed, or above 90 °F: go somewhere safe. A fan alone does not protect above 90 °F.',
  'half-used-up':
    'Half of your time used up: ask the power company how long, and make what is left last twice as long. At three quarters: charge the car, pack your things, call the place.',
  'powered-place': 'Go to your place with power. Call ahead that it has power.',
  'choose-a-place': 'Choose now a place that has its own power, and a second. 211 knows shelters.',
  'pets-go-along':
    'Pets go with you: ask the place whether it takes them. Carrier, food and water by the door.',
};
