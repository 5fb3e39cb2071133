import type { PanelTraits } from '../../physics/panel/panel-hours';
import { snowLossShare } from '../../physics/panel/snow-loss';
import { panelAssumption } from '../../tables/panel-figures';

export interface PanelWish {
  /** Of what the panels give, 0 to 1, lost to dirt, shade, wiring and the like together. */
  readonly lossShare: number;
  /** 0 flat, 90 upright. */
  readonly tiltDeg: number;
  /** Mean outdoor temperature of the twelve months, January first, C; null leaves snow out. */
  readonly monthMeanC: readonly number[] | null;
}

/** What lies between the sun and the inverter, with the assumed traits of usual panels. */
export function usualPanels({ lossShare, tiltDeg, monthMeanC }: PanelWish): PanelTraits {
  const snow = {
    noneAboveC: panelAssumption('snowNoneAboveC'),
    mostBelowC: panelAssumption('snowMostBelowC'),
    mostLostShare: panelAssumption('snowMostLostShare'),
  };
  return {
    albedo: panelAssumption('albedo'),
    noctC: panelAssumption('noctC'),
    powerPerKelvin: panelAssumption('powerPerKelvin'),
    lossShare,
    ...(monthMeanC !== null && {
      snowLossByMonth: monthMeanC.map((meanC) => snowLossShare({ meanC, tiltDeg }, snow)),
    }),
  };
}
