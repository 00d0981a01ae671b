import { memo, useDeferredValue, useMemo } from 'react';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength } from '../reading/numbers.ts';
import type { OpenQuestions } from '../compute/computation.ts';
import { fieldId } from '../notebook/field-id.ts';
import calloutStyles from '../ui/callout.module.css';

/** The measurement that would help most, rendered after everything more urgent. Its place stays when there is none. */
export const NextMeasure = memo(function NextMeasure({
  openQuestions,
  tape,
}: {
  readonly openQuestions: OpenQuestions;
  readonly tape: Tape;
}) {
  const words = say.body.next;
  const later = useDeferredValue(openQuestions);
  const next = useMemo(() => later.next(), [later]);
  return (
    <aside className={calloutStyles.callout} aria-label={words.title}>
      {next.is === 'take' || next.is === 'surer' ? (
        <p>
          {words.title}: <a href={`#${fieldId(next.name)}`}>{say.dimension[next.name]}</a>.{' '}
          {next.is === 'take'
            ? words.without[next.without]
            : words.why(showLength(next.before, tape), showLength(next.after, tape))}
        </p>
      ) : (
        <p>{words.none[next.is]}</p>
      )}
    </aside>
  );
});
