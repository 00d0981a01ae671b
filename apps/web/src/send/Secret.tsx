import { useId, useState } from 'react';
import { copyText } from '../kept/export-text.ts';
import { say } from '../messages.ts';
import buttonStyles from '../ui/buttons.module.css';
import calloutStyles from '../ui/callout.module.css';
import textStyles from '../ui/text.module.css';

/** A signing secret, shown only once. */
export function Secret({ secret, until }: { readonly secret: string; readonly until: string | null }) {
  const words = say.send.secret;
  const id = useId();
  const [copied, setCopied] = useState(false);
  return (
    <div className={calloutStyles.callout}>
      <label htmlFor={id}>{words.label}</label>
      <textarea id={id} readOnly rows={2} value={secret} onFocus={(event) => event.currentTarget.select()} />
      <p className={textStyles.hint}>
        {words.once} {until !== null && words.old(new Date(until).toLocaleString(navigator.language))}
      </p>
      <div className={buttonStyles.row}>
        <button type="button" onClick={() => void copyText(secret).then(setCopied)}>
          {words.copy}
        </button>
        <span role="status" className={textStyles.hint}>
          {copied ? say.keep.copied : ''}
        </span>
      </div>
    </div>
  );
}
