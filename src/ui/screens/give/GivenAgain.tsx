/** What was given out before, once more: its link with the QR code, its files and sheets; a seal asks for the passphrase. */
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { readingGiving } from '../../../desk/giving.ts';
import { inWords } from '../../../words/problems.ts';
import { useGivings } from '../../flow/useGivings.ts';
import { useSliced } from '../../flow/useSliced.ts';
import { webCrypto } from '../../flow/webCrypto.ts';
import { Foot } from '../../parts/Foot.tsx';
import { PageHead } from '../../parts/PageHead.tsx';
import { Problems } from '../../parts/Problems.tsx';
import { TextField } from '../../parts/TextField.tsx';
import { GivenOut } from './GivenOut.tsx';
import { LookedAt } from './LookedAt.tsx';

export function GivenAgain({ id }: { readonly id: string }) {
  const [givings] = useGivings();
  const giving = givings === null ? 'waiting' : (givings.find((one) => one.giving === id) ?? null);
  const { result } = useSliced(
    useMemo(() => (giving === 'waiting' || giving === null ? null : () => readingGiving(giving)), [giving]),
  );
  const [passphrase, setPassphrase] = useState('');
  const [isAsked, setAsked] = useState(false);
  const wasSealed = giving === 'waiting' ? undefined : giving?.tutor?.sealed;
  const wants = wasSealed !== false && !isAsked;
  return (
    <>
      <PageHead
        title="Given out"
        about={giving === 'waiting' || giving === null ? '' : giving.group}
        says="nothing leaves this device but by you"
        takesFocus
        acts={
          <>
            <Link href="/give" className="button">
              Give out
            </Link>
            <Link href="/collect" className="button">
              Collect
            </Link>
          </>
        }
      />
      <main className="columns give">
        {giving === null ? (
          <p className="prose">
            <strong>It is not on this device.</strong> What was given out is kept where that was done, until
            it is deleted. Your own copy of it, dropped on <Link href="/collect">Collect</Link>, brings it
            here.
          </p>
        ) : giving === 'waiting' || result === null ? (
          <p role="status">Reading what was given out …</p>
        ) : result.ok ? (
          <>
            <section className="stack preview not-printed" aria-labelledby="seen-heading">
              <h2 id="seen-heading">The learner sees</h2>
              <LookedAt read={result.value} />
            </section>
            {wants && webCrypto() === null ? (
              <p className="prose" role="alert">
                <strong>Not here.</strong> {wasSealed === true ? 'It was sealed' : 'It may have been sealed'},
                and the page came by plain http, where a browser has nothing to seal with. Open the page by
                https.
              </p>
            ) : wants ? (
              <form
                className="stack"
                onSubmit={(event) => {
                  event.preventDefault();
                  setAsked(wasSealed !== true || passphrase !== '');
                }}
              >
                <h2>{wasSealed === true ? 'Sealed' : 'Sealed?'}</h2>
                <p className="prose">
                  The passphrase is kept nowhere. Type it again: link and file are then sealed as before.
                  {wasSealed === true ? '' : ' It may stay empty where nothing was sealed.'}
                </p>
                <TextField label="passphrase" value={passphrase} maxLength={200} onChange={setPassphrase} />
                <div className="acts">
                  <button type="submit" className="main" disabled={wasSealed === true && passphrase === ''}>
                    {passphrase === '' && wasSealed !== true ? 'Show the link' : 'Seal it again'}
                  </button>
                </div>
              </form>
            ) : (
              <GivenOut giving={giving} read={result.value} passphrase={passphrase} isKept />
            )}
          </>
        ) : (
          <Problems
            file={giving.word}
            problems={inWords(result.problems)}
            kept="It is kept as it was given out."
          />
        )}
      </main>
      <Foot />
    </>
  );
}
