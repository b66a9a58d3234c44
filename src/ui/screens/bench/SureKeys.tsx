/** How sure, with what each sureness wins and loses: one tap says it and locks. */
import type { Sure } from '../../../attempt/attempt.ts';
import { SURE_WORDS } from '../../words/answers.ts';

const STAKES: readonly { readonly sure: Sure; readonly wins: number; readonly loses: string }[] = [
  { sure: 'guessing', wins: 1, loses: '0' },
  { sure: 'fairly-sure', wins: 2, loses: '−2' },
  { sure: 'would-sign', wins: 3, loses: '−6' },
];

interface Props {
  readonly isReady: boolean;
  readonly onLock: (sure: Sure) => void;
}

export function SureKeys({ isReady, onLock }: Props) {
  return (
    <div className="answer-keys">
      {STAKES.map(({ sure, wins, loses }) => (
        <button key={sure} type="button" className="sure" disabled={!isReady} onClick={() => onLock(sure)}>
          {SURE_WORDS[sure]}
          <small>
            right {wins}, wrong {loses}
          </small>
        </button>
      ))}
    </div>
  );
}
