/** A button that lets a file be chosen from this device. Reading it is the caller's business. */
import { useRef } from 'react';

interface Props {
  readonly label: string;
  readonly onFile: (file: File) => void;
}

export function OpenFile({ label, onFile }: Props) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        hidden
        aria-label={label}
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file !== undefined) onFile(file);
          // The same file may be chosen again after it was mended.
          event.target.value = '';
        }}
      />
      <button type="button" onClick={() => input.current?.click()}>
        {label}
      </button>
    </>
  );
}
