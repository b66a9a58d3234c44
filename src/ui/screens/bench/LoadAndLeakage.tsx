/**
 * What the stand-in draws and leaks, as part of the set-up: figures with their units. What is typed and does not fit
 * stays, and keeps the set-up from being taken.
 */
import { useState } from 'react';
import type { Leakage } from '../../../bench/standIn.ts';
import type { Line } from '../../../laws/conductors.ts';
import { figureWithin, RANGES } from '../../format/ranges.ts';
import { Choice } from '../../parts/Choice.tsx';
import { FigureField } from '../../parts/FigureField.tsx';

interface Drawn {
  readonly load: number;
  readonly leakage: Leakage | null;
}

interface Props extends Drawn {
  readonly lines: readonly Line[];
  /** Null while a figure does not fit. */
  readonly onDrawn: (drawn: Drawn | null) => void;
}

interface Typed {
  readonly load: string;
  readonly ac: string;
  readonly dc: string;
  readonly line: Line;
}

/** Amperes as milliamperes, without what binary arithmetic adds. */
const inMilliamps = (amps: number): string => String(Number((1000 * amps).toPrecision(6)));

function drawnBy({ load, ac, dc, line }: Typed): Drawn | null {
  const amps = figureWithin(load, RANGES.load);
  const alternating = figureWithin(ac, RANGES.leakageAc);
  const direct = figureWithin(dc, RANGES.leakageDc);
  if (amps === null || alternating === null || direct === null) return null;
  const none = alternating === 0 && direct === 0;
  return { load: amps, leakage: none ? null : { ac: alternating / 1000, dc: direct / 1000, line } };
}

export function LoadAndLeakage({ load, leakage, lines, onDrawn }: Props) {
  const [typed, setTyped] = useState<Typed>({
    load: String(load),
    ac: inMilliamps(leakage?.ac ?? 0),
    dc: inMilliamps(leakage?.dc ?? 0),
    line: leakage?.line ?? 'L1',
  });
  const set = (change: Partial<Typed>) => {
    const next = { ...typed, ...change };
    setTyped(next);
    onDrawn(drawnBy(next));
  };
  return (
    <div className="stack">
      <FigureField
        label="load on each line, A (0: none)"
        range={RANGES.load}
        value={typed.load}
        onChange={(text) => set({ load: text })}
      />
      <FigureField
        label="leakage a.c., mA (0: none)"
        range={RANGES.leakageAc}
        value={typed.ac}
        onChange={(text) => set({ ac: text })}
      />
      <FigureField
        label="leakage smooth d.c., mA (0: none)"
        range={RANGES.leakageDc}
        value={typed.dc}
        onChange={(text) => set({ dc: text })}
      />
      {lines.length > 1 ? (
        <Choice
          label="leakage from"
          options={lines.map((line): [string, string] => [line, line])}
          value={typed.line}
          onChange={(line) => set({ line: line as Line })}
        />
      ) : null}
    </div>
  );
}
