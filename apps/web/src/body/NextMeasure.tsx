import { memo, useMemo } from 'react';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { useLater } from '../page/use-later.ts';
import { showLength } from '../reading/numbers.ts';
import type { Asking } from '../reckon/reckoned.ts';
import { fieldId } from './field-id.ts';

/** The one measure that would help most, asked for once everything else is on the screen. Its place is kept when there is none. */
export const NextMeasure = memo(function NextMeasure({
  asking,
  tape,
}: {
  readonly asking: Asking;
  readonly tape: Tape;
}) {
  const words = say.body.next;
  const later = useLater(asking);
  const next = useMemo(() => later.next(), [later]);
  if (next === null)
    return (
      <aside className="next" aria-label={words.title}>
        <p>{words.done}</p>
      </aside>
    );
  const { name, before, after } = next;
  const why =
    before === null || after === null ? words.first : words.why(showLength(before, tape), showLength(after, tape));
  return (
    <aside className="next" aria-label={words.title}>
      <p>
        {words.title}: <a href={`#${fieldId(name)}`}>{say.dimension[name]}</a>. {why}
      </p>
    </aside>
  );
});
