import textStyles from '../ui/text.module.css';
/** What went wrong, told at once; the place is there before it is needed, so that it is heard. */
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
