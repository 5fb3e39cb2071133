import type { WayOutId } from '../../../plan/electrical/way-out';

const ways: Readonly<Record<WayOutId, { readonly way: string; readonly when: string }>> = {
  'sub-panel': {
    way: 'a sub-panel for the chosen circuits',
    when: 'the loads that must run move to it, so the main panel needs no room and the source need not carry the whole house',
  },
  'load-control': {
    way: 'listed load control that holds back the largest loads',
    when: 'the calculated load or the source is too small only while the largest loads run',
  },
  'new-panel': {
    way: 'a new panel with a larger bus',
    when: 'the panel itself is unsound, or its bus is the only limit',
  },
  'larger-service': {
    way: 'a larger service',
    when: 'the load stays over the main after load control, and the utility agrees',
  },
};

/** One way to make panel and service fit, and where it is the right one. */
export const sayWayOut = (id: WayOutId): { readonly way: string; readonly when: string } =>
  ways[id];
