/**
 * The set-up folded: how everything is set, in a few lines, and in words what the trainee has changed of it since the
 * last test was left.
 */
import type { UnitSheet } from '../../../unit/design.ts';
import type { Draft } from '../../flow/attemptMachine.ts';
import type { Position } from '../../flow/position.ts';
import { isAlike } from '../../flow/position.ts';
import { leakageText, loadText } from '../../words/settings.ts';
import { optionText, rowsFor } from './setUpRows.ts';

interface Props {
  readonly outlet: UnitSheet['outlet'];
  readonly now: Position;
  readonly draft: Draft;
}

/** What of the stand-in is a part of it; named one by one only where one of them is not sound. */
const INSIDE: readonly (keyof Position)[] = ['pilot', 'diode', 'earth'];

export function SetAsItIs({ outlet, now, draft: { position, wait } }: Props) {
  const rows = rowsFor(outlet);
  const isWhole = INSIDE.every((field) => position[field] === 'sound');
  const shown = isWhole ? rows.filter(({ field }) => !INSIDE.includes(field)) : rows;
  const draws = position.load > 0 || position.leakage !== null;
  const changes = changesOf(outlet, now, position);
  return (
    <>
      <dl className="set-list">
        {shown.map((row) => (
          <div key={row.field} className="set-row">
            <dt>{row.label}</dt>
            <dd>{optionText(row, position)}</dd>
          </div>
        ))}
        {isWhole ? (
          <div className="set-row">
            <dt>its CP, diode, PE</dt>
            <dd>sound</dd>
          </div>
        ) : null}
        {draws ? (
          <div className="set-row">
            <dt>it draws</dt>
            <dd>
              {loadText(position.load)}, {leakageText(position.leakage)}
            </dd>
          </div>
        ) : null}
        {wait > 0 ? (
          <div className="set-row">
            <dt>then wait</dt>
            <dd>{wait} s</dd>
          </div>
        ) : null}
      </dl>
      <p className="note">
        {changes.length === 0
          ? 'As you left it.'
          : `You changed: ${changes.join('; ')}. It is done when you lock.`}
      </p>
    </>
  );
}

function changesOf(outlet: UnitSheet['outlet'], now: Position, then: Position): readonly string[] {
  const listed = rowsFor(outlet)
    .filter(({ field }) => now[field] !== then[field])
    .map((row) => `${row.label} from ${optionText(row, now)} to ${optionText(row, then)}`);
  const drawn = [
    ...(isAlike(now, then, 'load') ? [] : [loadText(then.load)]),
    ...(isAlike(now, then, 'leakage') ? [] : [leakageText(then.leakage)]),
  ];
  return [...listed, ...drawn];
}
