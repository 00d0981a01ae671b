import textStyles from '../ui/text.module.css';
/** Error messages. The alert region is always there, so that screen readers announce its changes. */
export function ErrorList({ lines }: { readonly lines: readonly string[] }) {
  return (
    <div role="alert">
      {lines.map((line) => (
        <p key={line} className={textStyles.wrong}>
          {line}
        </p>
      ))}
    </div>
  );
}
