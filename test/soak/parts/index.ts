import type { Part } from '../part';
import { agree } from './agree';
import { disk } from './disk';
import { enough, enoughEven } from './enough';
import { files } from './files';
import { hazards } from './hazards';
import { homes } from './homes';
import { interviews } from './interviews';
import { keys } from './keys';
import { kills } from './kills';
import { lists } from './lists';
import { moves } from './moves';
import { pane } from './pane';
import { sheets } from './sheets';
import { whatIf } from './what-if';

/** Every part by the name it is asked for with `--part`, in the order a whole run takes. */
export const parts: Readonly<Record<string, Part>> = {
  hazards,
  disk,
  kills,
  keys,
  files,
  homes,
  interviews,
  lists,
  agree,
  enough,
  'enough-even': enoughEven,
  moves,
  pane,
  sheets,
  'what-if': whatIf,
};
