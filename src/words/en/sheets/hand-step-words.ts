import type { HandStep } from '../../../plan/on-the-day/hand-steps';

/** What each step of the order says, one thing to do in each. */
export const handStepWords: Readonly<Record<HandStep, string>> = {
  'say-who-is-out': 'Only your house dark? Call the power company before anything else.',
  'alarms-work': 'Test each carbon monoxide alarm. None works? Then no generator.',
  'generator-to-its-place':
    'Generator to its marked place: outdoors, 20 feet or more from every door, window and vent, exhaust away from the house. Never on a porch or in a garage, also not in rain.',
  'solar-off': 'Solar breaker OFF, if you have solar.',
  'branches-off': 'All branch breakers OFF.',
  'main-off': 'MAIN breaker OFF. It must be off before the inlet is on.',
  'plate-over':
    'Sliding plate, or transfer switch, to GENERATOR. Stuck? Stop. Never get around it.',
  'cord-in': 'Plug the cord into the inlet, then into the generator.',
  'cord-into-vehicle': 'Plug the cord into the inlet, then into the vehicle.',
  'start-outdoors': 'Generator breaker OFF. Start it, and let it warm up for a few minutes.',
  'generator-breaker-on': 'Generator breaker ON.',
  'inlet-on': 'Inlet breaker ON.',
  'branches-one-by-one': 'Branch breakers ON one by one, motors first, half a minute apart.',
  'charger-on':
    'Plug the charger of the battery into the generator. Use the plug that is marked for it.',
  'cords-straight':
    'One heavy cord straight to each thing, never into a wall outlet. A cord that gets warm is too thin: unplug it.',
  'one-at-a-time': 'Switch things on one at a time, the one with the largest motor first.',
  'refuel-cold': 'To refuel: stop it, wait 15 minutes, fill outdoors. Never hot or running.',
  'starts-itself': 'It starts by itself. Smell gas? Go out, stay away from it, and call 911.',
  'exhaust-clear':
    'Look that nothing stands before its exhaust: snow, leaves, a car. Close the windows on that side.',
  'heavy-loads-off': 'Switch off what is not needed, at its switch or breaker (the list below).',
  'oil-every-day':
    'It runs longer than a day? Stop it once a day as its book says, let it cool, and look at the oil.',
  'takes-over': 'It takes over by itself. Leave the main breaker as it is.',
  'read-display':
    'Read the display: what is left, what is drawn now. Write both down, and the time.',
  'pack-on':
    'Take the pack to what it runs, on a hard floor, nothing on top of it. Switch its outlets on.',
  'pack-off-between':
    'Switch its outlets off whenever nothing runs on it: it uses some power just by being on.',
  'vehicle-outdoors':
    'Vehicle outdoors, never in a garage, parking brake set, outlets switched on as its book says.',
  'vehicle-reserve':
    'Stop while it can still take you to the place you would go to and on to fuel or a charger.',
  'lights-not-flames':
    'Battery lights on. No candles. Nothing that burns for heat, unless made for indoors and with a chimney.',
  'doors-shut': 'Keep the refrigerator and the freezer shut. Write the time on this sheet.',
  'inlet-off': 'Inlet breaker OFF.',
  'plate-back': 'Sliding plate, or transfer switch, back to GRID.',
  'main-on': 'MAIN breaker ON.',
  'branches-on': 'Branch breakers ON, one by one.',
  'generator-off': 'Generator breaker OFF. Let it run a few minutes, stop it, let it cool there.',
  'cord-out': 'Unplug the cord.',
  'solar-on': 'Solar breaker ON, if you have solar.',
  unplug: 'Switch things off and unplug the cords from the source.',
  'plug-back': 'Plug things back into the wall, one at a time.',
  'charge-again': 'Charge it again at once: the next outage may follow.',
  'goes-back-itself': 'It goes back by itself once power is steady. Touch nothing in the panel.',
  'steady-first': 'Wait until the power has been steady for ten minutes.',
  'fuel-for-next': 'Write down the hours it ran. Oil and fuel for the next time.',
};
