/** What a hand can move, as buttons over the drawing: each says what it is and how it is drawn, and opens its choice. */
import type { Position } from '../flow/position.ts';
import type { Hand } from './hands.ts';
import { handName } from './hands.ts';
import { handsOf } from './handTargets.ts';
import type { Shown } from './layout.ts';

export interface HandsNow {
  /** Things as they are; what is drawn otherwise comes at the lock. */
  readonly now: Position;
  readonly onHand: (hand: Hand) => void;
  /** The hand whose choice is open. */
  readonly open: Hand | null;
  /** Whether a touch acts at once, as after the lock. */
  readonly acts: boolean;
}

interface Props extends HandsNow {
  readonly layout: Shown;
  /** As drawn. */
  readonly position: Position;
}

export function Hands({ layout, position, now, onHand, open, acts }: Props) {
  const { width, height } = layout;
  return (
    // biome-ignore lint/a11y/useSemanticElements: buttons on a drawing are no set of fields
    <div role="group" aria-label={acts ? 'Do it by touching the drawing' : 'Set up by touching the drawing'}>
      {[...handsOf(layout)].map(([hand, at]) => (
        <button
          key={hand}
          type="button"
          className="hand-button"
          style={{
            left: `${(100 * (at.left + at.width / 2)) / width}%`,
            top: `${(100 * (at.top + at.height / 2)) / height}%`,
            width: `${(100 * at.width) / width}%`,
            height: `${(100 * at.height) / height}%`,
          }}
          aria-label={handName(hand, position, now)}
          aria-expanded={open === hand}
          onClick={() => onHand(hand)}
        />
      ))}
    </div>
  );
}
