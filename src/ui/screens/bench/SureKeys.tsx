/**
 * How sure: one tap says it of the whole and locks. Before that single lines can be set less sure, where somebody cares
 * to. It is told in the debrief, and never marked.
 */
import type { Sure } from '../../../attempt/record/attempt.ts';
import { SURENESS } from '../../../attempt/record/attempt.ts';
import type { Line } from '../../../attempt/record/lines.ts';
import type { InWords } from '../../../words/actions.ts';
import { SURE_SHARES, SURE_WORDS } from '../../../words/answers.ts';
import type { LessSure } from '../../flow/attemptMachine.ts';
import { useKept } from '../../flow/useKept.ts';
import { Choice } from '../../parts/Choice.tsx';

/** The surest is never less than the whole. */
const LESS = SURENESS.slice(0, -1);

interface Props {
  readonly isReady: boolean;
  /** Those that were answered. */
  readonly lines: readonly InWords<Line>[];
  readonly onLock: (sure: Sure, lessSure: LessSure) => void;
}

export function SureKeys({ isReady, lines, onLock }: Props) {
  const [own, setOwn] = useKept<Readonly<Record<string, string>>>('less sure', {}, ['', ...LESS]);
  const lessSure = Object.fromEntries(
    lines.flatMap(({ id }) => {
      const sure = LESS.find((one) => one === own[id]);
      return sure === undefined ? [] : [[id, sure]];
    }),
  );
  return (
    <>
      <div className="answer-keys">
        {SURENESS.map((sure) => (
          <button
            key={sure}
            type="button"
            className="sure"
            disabled={!isReady}
            onClick={() => onLock(sure, lessSure)}
          >
            {SURE_WORDS[sure]}
            <small>{SURE_SHARES[sure]}</small>
          </button>
        ))}
      </div>
      {lines.length < 2 ? null : (
        <details>
          <summary className="note">Less sure of one line?</summary>
          {lines.map(({ id, text }) => (
            <Choice
              key={id}
              label={text}
              none="as sure as of the rest"
              options={LESS.map((sure) => [sure, SURE_WORDS[sure]])}
              value={own[id] ?? ''}
              onChange={(sure) => setOwn({ ...own, [id]: sure })}
            />
          ))}
        </details>
      )}
    </>
  );
}
