import { useId, useState } from 'react';
import { copyText } from '../kept/export-text.ts';
import { say } from '../messages.ts';

/** A signing secret, shown this once. */
export function Secret({ secret, until }: { readonly secret: string; readonly until: string | null }) {
  const words = say.send.secret;
  const id = useId();
  const [copied, setCopied] = useState(false);
  return (
    <div className="next">
      <label htmlFor={id}>{words.label}</label>
      <textarea id={id} readOnly rows={2} value={secret} onFocus={(event) => event.currentTarget.select()} />
      <p className="hint">
        {words.once} {until !== null && words.old(new Date(until).toLocaleString(navigator.language))}
      </p>
      <div className="buttons">
        <button type="button" onClick={() => void copyText(secret).then(setCopied)}>
          {words.copy}
        </button>
        <span role="status" className="hint">
          {copied ? say.keep.copied : ''}
        </span>
      </div>
    </div>
  );
}
