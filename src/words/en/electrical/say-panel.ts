import type { PanelNote, PanelTrap } from '../../../plan/electrical/panel-fit';
import type { BusbarRouteId } from '../../../tables/electrical/busbar-routes';

const ways: Readonly<Record<BusbarRouteId, string>> = {
  'opposite-end': 'source at the far end of the busbar from the main',
  'any-place': 'source anywhere on the busbar',
  'sum-of-breakers': 'all breakers but the main add up to no more than the busbar',
  'center-fed': 'one end of a center-fed dwelling panel',
  'supply-side': 'ahead of the service disconnect',
  'power-control': 'limited by a listed power control or energy management system',
};

/** A way of NEC 705.12: "source anywhere on the busbar". */
export const busbarWay = (way: BusbarRouteId): string => ways[way];

/** Where an edition of the code has a way. */
export const codeSection = (section: string | null): string => section ?? 'not in this edition';

/** What about the panel itself stands in the way. */
export function sayPanelTrap(trap: PanelTrap): string {
  switch (trap.code) {
    case 'split-bus':
      return 'Split bus: no single switch turns the house off, and no handle shows the size of the service. An interlock at one of its switches would not cut off the rest.';
    case 'fuses':
      return 'Fuses: there is no breaker an interlock could slide against.';
    case 'no-main-here':
      return 'No main in this box: it may be a sub-panel, whose handle numbers are not the service. Look for the main by the meter.';
    case 'panel-kind-not-known':
      return 'The kind of panel is not known; an interlock must not be planned before it is.';
    case 'main-over-bus':
      return `The main (${trap.mainAmps} A) is larger than the bus (${trap.busAmps} A): the bus is not protected until an electrician has settled it.`;
    case 'heaters-at-208':
      return '120/208 V: heaters give about three quarters of their 240 V power, and inverters must be listed for 208 V.';
  }
}

/** Room, conductors and control of this panel. */
export function sayPanelNote(note: PanelNote): string {
  switch (note.code) {
    case 'spaces-not-counted':
      return 'The free spaces were not counted; a two-pole breaker needs two side by side.';
    case 'room-for-two-poles':
      return `${note.spaces} free spaces: room for a two-pole breaker if two lie side by side.`;
    case 'no-room-for-two-poles':
      return `${note.spaces} free spaces: not room for a two-pole breaker; a sub-panel for chosen circuits makes room without a new service.`;
    case 'service-conductors':
      return `Service conductors of a ${note.mainAmps} A main: ${note.copper} copper or ${note.aluminum} aluminum where they carry the whole dwelling (Table 310.12).`;
    case 'most-set-point':
      return `A listed load manager on this service may be set to ${Math.round(note.amps)} A at most, for its set point counts as continuous (220.70, 750.30, 2023 edition).`;
  }
}
