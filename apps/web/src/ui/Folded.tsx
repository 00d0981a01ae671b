import { useState, type ReactNode } from 'react';

/** A disclosure whose content is rendered only while it is open. */
export function Folded({
  summary,
  className,
  children,
}: {
  readonly summary: ReactNode;
  readonly className?: string | undefined;
  readonly children: () => ReactNode;
}) {
  const [open, setOpen] = useState(false);
  return (
    <details className={className} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {open && children()}
    </details>
  );
}
