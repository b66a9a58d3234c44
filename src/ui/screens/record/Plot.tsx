/** The frame of a plot of shares from 0 to 100 %: axis, grid lines that may vanish without loss, lettering. */
import type { ReactNode } from 'react';

const TOP = 12;
const BOTTOM = 172;

export const PLOT = {
  left: 40,
  right: 312,
  bottom: BOTTOM,
  /** Height of a share from 0 to 1. */
  y: (share: number): number => BOTTOM - share * (BOTTOM - TOP),
} as const;

interface Props {
  readonly name: string;
  /** What the upright axis counts. */
  readonly unit: string;
  readonly children: ReactNode;
}

export function Plot({ name, unit, children }: Props) {
  return (
    <figure className="plot">
      <figcaption className="lettering" aria-hidden="true">
        {unit}
      </figcaption>
      <svg viewBox="0 0 320 200" role="img" aria-label={name}>
        {[0, 0.25, 0.5, 0.75, 1].map((share) => (
          <g key={share}>
            <path className="grid" d={`M${PLOT.left} ${PLOT.y(share)}H${PLOT.right}`} />
            <text x={PLOT.left - 6} y={PLOT.y(share) + 4} textAnchor="end">
              {100 * share}
            </text>
          </g>
        ))}
        <path className="axis" d={`M${PLOT.left} ${TOP}V${BOTTOM}H${PLOT.right}`} />
        {children}
      </svg>
    </figure>
  );
}
