/** The bar of a thing on the drawing that was touched and has more positions than two: one press takes one. */
import type { Position } from '../../flow/position.ts';
import type { Row } from './setUpRows.ts';

interface Props {
  readonly row: Row;
  /** When it moves. */
  readonly when: string;
  readonly position: Position;
  readonly now: Position;
  readonly onChoose: (change: Partial<Position>) => void;
  readonly onClose: () => void;
}

export const HandChoices = ({ row, when, position, now, onChoose, onClose }: Props) => (
  <>
    <p className="bar-line">
      <strong>
        {row.label}, {when}:
      </strong>
    </p>
    {/* biome-ignore lint/a11y/useSemanticElements: buttons that act are no set of fields */}
    <div className="bar-choices" role="group" aria-label={row.label}>
      {row.options.map(([option, text]) => (
        <button
          key={option}
          type="button"
          aria-pressed={row.shows(position) === option}
          onClick={() => {
            onClose();
            onChoose(row.sets(option, now));
          }}
        >
          {text}
        </button>
      ))}
      <button type="button" className="plain" onClick={onClose}>
        Close
      </button>
    </div>
  </>
);
