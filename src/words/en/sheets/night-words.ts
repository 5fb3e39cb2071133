import type { RuleId } from '../../../tables/rules';

/**
 * What kills, said for somebody who stands in the dark: what it is, and all that is to be done about it on the night. A
 * caution that is not here stands whole; what has to be mended beforehand stands whole on the family's sheet and in the
 * details. Every distance, temperature and number to call of the whole caution stands here too.
 */
export const nightWords: Readonly<Partial<Record<RuleId, string>>> = {
  'gas-smell':
    'Smell gas? Out at once, leave every switch as it is. Call the gas company or 911 from afar. Stay off any generator; tell them if one here can start by itself.',
  'co-signs':
    'Headache, dizziness or an alarm: it can be carbon monoxide. All out into fresh air, call 911 from there, go back in for nothing.',
  'hot-panel':
    'Panel, outlet or switch hot, buzzing or burned: do not touch. Turn things off at their own switches, call an electrician today. Smoke? Go out, call 911.',
  'water-and-electricity':
    'Water near a panel, outlet or battery kills: stay out, the power company cuts the power from outside. An electrician checks what got wet before use.',
  'backfeed-found':
    'Never use the cord with a plug on both ends: it kills. Cut it. Only an inlet with a listed transfer switch or interlock an electrician fitted feeds a house.',
  'no-backfeed':
    'Never feed your home through an outlet: it kills. Plug things straight into the source, or use an inlet with listed transfer gear an electrician fitted.',
  'porch-carport':
    'A porch, carport, garage, shed, balcony or crawl space traps the gas, also with the door open. The generator stands on open ground, even in rain.',
  'apartment-no-engine':
    'No generator in an apartment, on a balcony, on the roof or by the wall: its gas reaches you and the neighbors. Use a battery, or go to a place with power.',
  'engine-too-close':
    "Your place is too near the house for a generator: open ground, 20 feet or more from every opening, the neighbors' too. None? A battery, or go elsewhere.",
  'co-distance':
    "A running generator's exhaust kills in minutes. Outdoors, 20 feet or more from all doors, windows and vents, the neighbors' too; aim it away, shut windows.",
  'hybrid-starts-itself':
    'A hybrid left on starts its engine by itself. Never in a garage or carport or by a window, even with the door open: park outdoors, 20 feet from every opening, tailpipe away and clear of snow.',
  'charcoal-indoors':
    'Charcoal, grills and camp stoves outside only, away from doors and windows: indoors they kill, even in a fireplace or a garage. Eat what needs no cooking.',
  'oven-heat':
    'Never heat with an oven, a stove top, a grill or a burner with no chimney: its gas has no smell and kills. One warm room, warm clothes, or a place to go.',
  'gas-leak-self-start':
    'Smell gas? Go out, stay away from the generator, tell 911 or the gas company: it may start by itself and set the gas off.',
  'battery-smoke':
    'Battery smokes, hisses, swells or is very hot: out, shut its door, call 911 and say it is a battery. Do not open to look: its gas can explode. Stay away.',
  'flood-go':
    'The water rises: people, medicine, device batteries, go, also with the power on. Skip every other chore. Never drive through water.',
  'wildfire-go':
    'Told to go? Go now. Stop the generator and shut its fuel only if it takes less than a minute on your way. Stay for nothing. Leave some lights on for crews.',
  'co-alarm-first':
    'A carbon monoxide alarm with a battery on every floor and outside the bedrooms, or no generator and no fire for heat. A shut-off does not replace it. It sounds? Go out, call 911.',
  'fallen-wire':
    'A wire on the ground may be live, and so may what it touches. Stay 35 feet away or more, keep others back, call 911 and the power company. One falls on your car? Stay in, and call, unless it burns.',
  'fixed-engine-exhaust':
    'A fixed generator outdoors can fill a house with carbon monoxide; the 5 feet in codes is no safe distance. Alarms with batteries stay on, windows on its side shut, snow and plants off the exhaust.',
  'cold-room':
    'A room at 60 to 65 °F harms babies, the old, the ill: act then, warm one room, leave before 60 °F. Confused, slow, cold, 96 °F body heat or less: call 911.',
  'heat-room':
    'Above 90 °F indoors no fan protects you: wet skin and clothes, drink, go. People at risk act at 86 °F, leave by 90 °F or as the clinician says. Confused, faint, very hot: 911, cool with water.',
};
