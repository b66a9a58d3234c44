/** Symbols of an opened drawing, in the shapes of IEC 60617: contacts, rings, resistors, earth. */
import type { ReactNode } from 'react';

interface ContactProps {
  readonly hinge: number;
  readonly fixed: number;
  readonly y: number;
  readonly closed: boolean;
  /** A contactor's contact carries a half circle, a breaker's a cross. */
  readonly kind: 'contactor' | 'breaker' | 'plain';
}

export function Contact({ hinge, fixed, y, closed, kind }: ContactProps) {
  return (
    <>
      <path
        className="blade"
        d={closed ? `M${hinge} ${y}H${fixed}` : `M${hinge} ${y}L${fixed - 3} ${y - 12}`}
      />
      {kind === 'contactor' ? <path className="conductor" d={`M${fixed} ${y - 5}a5 5 0 0 1 0 10`} /> : null}
      {kind === 'breaker' ? (
        <path className="conductor" d={`M${fixed - 4} ${y - 4}l8 8M${fixed + 4} ${y - 4}l-8 8`} />
      ) : null}
    </>
  );
}

interface RingProps {
  readonly x: number;
  readonly from: number;
  readonly to: number;
  readonly name: string;
}

/** Embraces all live conductors: what it feels is their sum. */
export function Ring({ x, from, to, name }: RingProps) {
  return (
    <>
      <ellipse className="conductor" cx={x} cy={(from + to) / 2} rx={8} ry={(to - from) / 2 + 15} />
      <text x={x} y={from - 19} textAnchor="middle">
        {name}
      </text>
    </>
  );
}

interface ResistorProps {
  readonly x: number;
  readonly y: number;
  readonly name: string;
}

/** Lies in a line: 22 long, its name above. */
export function Resistor({ x, y, name }: ResistorProps) {
  return (
    <>
      <rect className="symbol" x={x} y={y - 5} width={22} height={10} />
      <text x={x + 11} y={y - 9} textAnchor="middle">
        {name}
      </text>
    </>
  );
}

export function EarthSign({ x, y }: { readonly x: number; readonly y: number }) {
  return <path className="conductor" d={`M${x - 10} ${y}h20M${x - 6} ${y + 4}h12M${x - 3} ${y + 8}h6`} />;
}

interface LabelProps {
  readonly x: number;
  readonly y: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly strong?: boolean;
  readonly children: ReactNode;
}

/** Lettering that keeps a paper edge where it crosses a line. */
export function Label({ x, y, anchor = 'start', strong = false, children }: LabelProps) {
  return (
    <text className={strong ? 'bold edged' : 'edged'} x={x} y={y} textAnchor={anchor}>
      {children}
    </text>
  );
}
