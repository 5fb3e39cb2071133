import { faultsIf, type Held } from '../seen';

/** Where life hangs on a device, what comes before any purchase is there, and nothing is "what to buy". */
export const lifeBeforeBuying: Held = ({ plan, text, front }) => {
  if (plan.home.lifeSupport !== 'yes') return null;
  return [
    ...(plan.lifeFirst?.told ? [] : ['lifeFirst is missing']),
    ...(text.includes('What to buy') ? ['"What to buy" stands in the summary'] : []),
    ...(text.includes('Life support:') ? [] : ['no line says when to leave with the device']),
    ...(front.includes('uy anything') || front.includes('efore anything is bought')
      ? []
      : ['the first page does not say what comes before a purchase']),
  ];
};

/** No plan is complete while life may hang on a device that has no second way, or that nobody was told of. */
export const lifeComplete: Held = ({ plan, text }) => {
  const { facts, lifeSupport } = plan.home;
  if (lifeSupport === 'no') return null;
  const ids = plan.cautions.map((one) => one.id);
  const team = (['supplier', 'power-company'] as const).every((who) =>
    facts.has('device-team', who),
  );
  const second = facts.told('second-source') && !facts.has('second-source', 'none');
  const draft = lifeSupport === 'unknown' || !team || !second;
  return [
    ...faultsIf(
      [
        'leaving-point' as const,
        ...(second || lifeSupport === 'unknown' ? [] : ['second-source' as const]),
      ].filter((id) => !ids.includes(id)),
      'a caution is missing',
    ),
    ...(plan.leavingPoint.length > 0 ? [] : ['no leaving point']),
    ...(draft && (plan.state !== 'draft' || !text.includes('DRAFT')) ? ['not a draft'] : []),
  ];
};

/** The electronics curve says nothing of a medical device, and the plan says that. */
export const medicalCurve: Held = ({ plan }) => {
  if (plan.home.lifeSupport === 'no') return null;
  const codes = plan.electrical.transferPoints.map((point) => point.code);
  return codes.includes('no-curve-for-medical')
    ? []
    : ['the electronics curve is applied to a medical device'];
};
