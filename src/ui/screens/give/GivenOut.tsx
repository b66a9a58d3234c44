/** What was given out: link with QR code, files, and on paper the task sheet and, apart from it, the key. */
import { useEffect, useMemo, useState } from 'react';
import type { Giving, ReadGiving } from '../../../desk/giving.ts';
import { forLearners, givingText } from '../../../desk/giving.ts';
import { LONGEST_LINK, linkText, linkTo } from '../../../desk/link.ts';
import { ROUNDS, sealed, sealedLinkText } from '../../../desk/seal.ts';
import { webCrypto } from '../../flow/webCrypto.ts';
import { download } from '../../parts/download.ts';
import { OFFERED } from '../shelf.ts';
import { KeySheet } from './KeySheet.tsx';
import { QrCode } from './QrCode.tsx';
import { TaskSheet } from './TaskSheet.tsx';

interface Props {
  readonly giving: Giving;
  readonly read: ReadGiving;
  /** Empty: it is not sealed. */
  readonly passphrase: string;
  readonly isKept: boolean;
  readonly onAnother?: () => void;
}

interface Made {
  readonly address: string;
  readonly file: string;
}

export function GivenOut({ giving, read, passphrase, isKept, onAnother }: Props) {
  const made = useMade(giving, passphrase);
  const [said, setSaid] = useState('');
  const [printing, setPrinting] = useState<'task' | 'key' | null>(null);
  useEffect(() => {
    if (printing === null) return;
    document.documentElement.dataset.print = printing;
    print();
    delete document.documentElement.dataset.print;
    setPrinting(null);
  }, [printing]);
  const name = `${giving.word}${giving.group === '' ? '' : `-${giving.group}`}`.replaceAll(
    /[^\p{L}\p{N}-]+/gu,
    '-',
  );
  const save = (what: string, text: string) => {
    download(`${name}-${what}.json`, text);
    setSaid(`The browser was given ${name}-${what}.json.`);
  };
  const isShort = made !== null && made.address.length <= LONGEST_LINK;
  return (
    <section className="stack" aria-labelledby="given-out-heading">
      <h2 id="given-out-heading" tabIndex={-1}>
        Given out: {giving.word}
      </h2>
      {made === null ? (
        <p role="status">{passphrase === '' ? 'Making the link …' : 'Sealing it …'}</p>
      ) : isShort ? (
        <div className="link-and-code not-printed">
          <QrCode text={made.address} name={`QR code of the link, word ${giving.word}`} />
          <div className="stack">
            <p>
              The code holds the link, and the link holds the job:{' '}
              {made.address.length.toLocaleString('en-GB')} characters.
            </p>
            <div className="acts">
              <button
                type="button"
                onClick={() =>
                  navigator.clipboard?.writeText(made.address).then(
                    () => setSaid('The link is copied.'),
                    () =>
                      setSaid(
                        'This browser does not copy: open the link in full, mark it and copy it by hand.',
                      ),
                  ) ??
                  setSaid('This browser does not copy: open the link in full, mark it and copy it by hand.')
                }
              >
                Copy the link
              </button>
            </div>
            <details>
              <summary>The link in full</summary>
              <p className="link-text">{made.address}</p>
            </details>
          </div>
        </div>
      ) : (
        <p className="found not-printed">
          <strong>Too long for a link:</strong> {made.address.length} characters, and {LONGEST_LINK} are what
          a camera reads well. It carries more than differs from a job that comes with the page. Give the file
          instead.
        </p>
      )}
      {passphrase === '' ? null : (
        <p className="note">
          Sealed: AES-GCM, the key by PBKDF2-HMAC-SHA-256 with {ROUNDS.toLocaleString('en-GB')} rounds.
          Without the passphrase nobody opens it, you neither.
        </p>
      )}
      <div className="acts not-printed">
        <button
          type="button"
          className={isShort ? '' : 'main'}
          disabled={made === null}
          onClick={() => made !== null && save('given-out', made.file)}
        >
          Save the learners’ file
        </button>
        <button type="button" onClick={() => save('tutor', givingText(giving))}>
          Save your own copy
        </button>
        <button type="button" onClick={() => setPrinting('task')}>
          Print the task sheet
        </button>
        <button type="button" onClick={() => setPrinting('key')}>
          Print the key
        </button>
        {onAnother === undefined ? null : (
          <button type="button" className="plain" onClick={onAnother}>
            Give out another
          </button>
        )}
      </div>
      <p role="status" className="note not-printed">
        {said}
      </p>
      <p className="note not-printed">
        {isKept ? (
          <>
            Your own copy is kept on this device: <i>Collect</i> marks by it. Save it as well if you collect
            on another computer.
          </>
        ) : (
          <>
            <strong>This browser keeps nothing.</strong> Save your own copy: without it nothing can be marked.
          </>
        )}
      </p>
      {printing === 'task' ? (
        <TaskSheet read={read} address={isShort ? (made?.address ?? null) : null} />
      ) : null}
      {printing === 'key' ? <KeySheet read={read} second={giving.tutor?.second ?? null} /> : null}
    </section>
  );
}

/** Null until it is made: a seal takes its time. */
function useMade(giving: Giving, passphrase: string): Made | null {
  const plain = useMemo(() => linkText(giving, OFFERED), [giving]);
  const [made, setMade] = useState<Made | null>(null);
  useEffect(() => {
    let isStale = false;
    const page = location.href.replace(/#.*$/, '');
    const crypto = webCrypto();
    const making = async (): Promise<Made> => {
      if (passphrase === '' || crypto === null)
        return { address: `${page}${linkTo(plain)}`, file: givingText(forLearners(giving)) };
      const [inLink, inFile] = await Promise.all([
        sealed(plain, passphrase, crypto),
        sealed(givingText(forLearners(giving)), passphrase, crypto),
      ]);
      return {
        address: `${page}${linkTo(sealedLinkText(inLink))}`,
        file: `${JSON.stringify(inFile, null, 1)}\n`,
      };
    };
    making().then((result) => {
      if (!isStale) setMade(result);
    });
    return () => {
      isStale = true;
    };
  }, [giving, plain, passphrase]);
  return made;
}
