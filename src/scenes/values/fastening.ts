import { turnsIn } from '#core/fastening/engagement.ts';
import { torqueShares } from '#core/fastening/nut-factor.ts';
import { USUAL } from '#core/fastening/usual.ts';
import { fasteningValue } from '../corner/fastening-values.ts';
import type { Standing } from '../corner/standing.ts';
import { provideFamily } from './families.ts';

provideFamily('fastening', {
  value: fasteningValue,
  ratios: {
    engagedTurns: (now) => turnsIn(fasteningValue('engagement', now), now.fixing.thread),
    engagedDiameters: (now) => fasteningValue('engagement', now) / now.fixing.thread.diameter,
    stretchPercent,
    /** What the weakest fastener has for each newton that it needs. */
    clampMargin: (now) => fasteningValue('clampLeast', now) / fasteningValue('clampNeeded', now),
    clampMarginByImpact: (now) =>
      fasteningValue('clampLeastByImpact', now) / fasteningValue('clampNeeded', now),
    clampMarginSoiled: (now) =>
      fasteningValue('clampLeast', now) / fasteningValue('clampNeededSoiled', now),
  },
});

/** Per cent of the tightening torque that stretches the fastener; the rest is friction. On a flat face of 1.3 d. */
function stretchPercent({ fixing: { thread } }: Standing): number {
  const friction = USUAL.frictionOfThread.value;
  const { stretch, ...rubbed } = torqueShares(thread, {
    inThread: friction,
    underHead: friction,
    headRadius: 0.65 * thread.diameter,
  });
  return (100 * stretch) / (stretch + rubbed.thread + rubbed.head);
}
