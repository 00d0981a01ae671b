import { useId, type ReactNode } from 'react';
import { say } from '../messages.ts';
import { Folded } from '../ui/Folded.tsx';
import { Wide } from '../ui/Wide.tsx';
import styles from './Drawing.module.css';

/** A row of a drawing's table: a name and its values as shown. */
export type NumberRow = readonly [name: string, ...values: string[]];

/** A picture with a name, a description, and the same numbers as a table. */
export function Drawing({
  title,
  description,
  viewBox,
  children,
  columns,
  rows,
  className = '',
  caption,
  width,
  height,
}: {
  readonly title: string;
  readonly description: string;
  readonly viewBox: string;
  readonly children: ReactNode;
  readonly columns?: readonly string[];
  /** Called once the table is open. */
  readonly rows?: () => readonly NumberRow[];
  readonly className?: string | undefined;
  readonly caption?: ReactNode;
  /** In CSS pixels; without them the drawing is as wide as its container. */
  readonly width?: number;
  readonly height?: number;
}) {
  const id = useId();
  return (
    <figure className={`${styles.drawing} ${className}`}>
      <svg
        role="img"
        aria-labelledby={`${id}-title`}
        aria-describedby={`${id}-description`}
        viewBox={viewBox}
        width={width}
        height={height}
      >
        <title id={`${id}-title`}>{title}</title>
        <desc id={`${id}-description`}>{description}</desc>
        {children}
      </svg>
      {caption !== undefined && <figcaption>{caption}</figcaption>}
      {rows !== undefined && columns !== undefined && (
        <Folded className={styles.numbers} summary={say.numbers}>
          {() => <NumberTable caption={title} columns={columns} rows={rows()} />}
        </Folded>
      )}
    </figure>
  );
}

export function NumberTable({
  caption,
  columns,
  rows,
}: {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly NumberRow[];
}) {
  return (
    <Wide label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column, i) => (
              <th key={i} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...values], i) => (
            <tr key={`${name}-${i}`}>
              <th scope="row">{name}</th>
              {values.map((value, j) => (
                <td key={j}>{value}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Wide>
  );
}
