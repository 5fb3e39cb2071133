import type { RuleId } from '../../../tables/rules';

/**
 * What is grave in the home as it is, said to the electrician who comes for it: what to look at, what to put right, what
 * to leave in writing. Each holds also where nobody told of it. What only the household can heed is on its own sheets.
 */
export const askedOfElectrician: Readonly<Partial<Record<RuleId, string>>> = {
  'hot-panel':
    'Panel, outlet or switch hot, buzzing, burned or rusted: find why, put it right before anything new is joined. Written report.',
  'outside-stop-engine':
    'Fixed generator: a stop outside that anyone can reach and read, where local code asks for it. Show it to the household.',
  'home-made-battery':
    'Battery home-made, unlisted or of unknown make? Look for UL 9540 (fixed) or UL 2743 (portable). Without a listing nothing is joined to it.',
  'no-freezing-charge':
    'Lithium battery: no charging below 32 °F. Is its place warmer, or has it a heater and a cut-off? Lowest charging temperature, from the data sheet.',
  'lead-acid-gas':
    'Lead-acid batteries: fresh air for the gas, nothing that sparks beside them, not on the floor of a living room or bedroom.',
  'outside-stop-battery':
    'Battery: a shut-off that fire crews can reach from outdoors and that shows on or off, where local code asks for it. Is it there, and labeled?',
  'vehicle-house-ok':
    'Vehicle: no house wiring from it without transfer gear made for that and the word of its maker in writing.',
  'rapid-shutdown':
    'Roof solar: rapid shutdown within reach outdoors, labeled, takes the voltage off the roof within 30 seconds. Show it working.',
  'panel-work-licensed':
    'Work in the panel: parts stay live with the main off. License and permit number in writing.',
  'interlock-order':
    'Inlet with a sliding plate: main off before the inlet is on, back the other way round. Is the order written at the panel, and the plate whole?',
  'transfer-listed':
    'Both sources never on together: is the transfer switch to UL 1008, or the interlock listed for this very panel (UL 67)? What is home-made is replaced. Permit number.',
  'neutral-bond':
    'One neutral-to-ground bond, with each source that may feed the house: where is it, and is the neutral of the source bonded? Two or none: put it right. Report, and a sign at the inlet.',
  'one-leg-120':
    'One 120 V source on both halves of the panel: find shared neutrals first, or feed chosen circuits only. Note that none is fed, or how it was dealt with.',
  'solar-with-engine':
    'Solar beside a generator: on which side of the transfer switch is it joined? If not built to work together, the solar breaker is off and tagged first. One-line drawing.',
  'known-bad-panel':
    'Panel of a make known not to trip? Replace it, or clear it in writing, before a source is joined. Not worked to try it out. Written report.',
  'panel-damage':
    'Breaker that trips, cover open, space uncovered: find why and put it right; no larger breaker. Written report.',
  'main-over-bus':
    'Main breaker larger than the bus? Read both labels; nothing is added until it is put right. Photos of both.',
  'aluminum-wiring':
    'Aluminum branch wires of about 1965 to 1973: check the joints, repair in a way CPSC accepts. Report, with the way of repair.',
  'knob-and-tube':
    'Wires on knobs: no new load and no source on them; look for insulation over them. List of those circuits, for the insurer.',
  'old-wiring-unknown': 'Nobody has looked at the kind of wiring: check it. Note on what is there.',
  'manufactured-feeder':
    'Manufactured home: four-wire feeder, neutral apart from ground inside; a source is joined at the pedestal, with the lot owner. Permit, and the agreement in writing.',
  'rehearsal-panel':
    'Old or troubled panel: nobody throws its main to try things out unless you are here. Which breakers may not be worked?',
};
