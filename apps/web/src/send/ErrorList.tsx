/** What went wrong, told at once; the place is there before it is needed, so that it is heard. */
export function ErrorList({ lines }: { readonly lines: readonly string[] }) {
  return (
    <div role="alert" className="errors">
      {lines.map((line) => (
        <p key={line} className="wrong">
          {line}
        </p>
      ))}
    </div>
  );
}
