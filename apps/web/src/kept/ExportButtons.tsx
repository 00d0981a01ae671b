import { useEffect, useRef, useState } from 'react';
import { inUnit, toCsv, toSvg, toText, type SheetUnit, type TargetSheet } from '#target-sheet';
import { say } from '../messages.ts';
import { copyText, saveFile } from './export-text.ts';
import buttonStyles from '../ui/buttons.module.css';
import textStyles from '../ui/text.module.css';

/** Buttons to export the sheet as a file or a text. `makeSheet` is called at the click, which gives it its id and time. */
export function ExportButtons({
  makeSheet,
  unit,
}: {
  readonly makeSheet: () => TargetSheet;
  readonly unit: SheetUnit;
}) {
  const words = say.keep;
  const [copied, setCopied] = useState(false);
  const [byHand, setByHand] = useState<string | null>(null);
  const sheet = (): TargetSheet => inUnit(makeSheet(), unit);
  const copy = async (): Promise<void> => {
    const text = toText(sheet());
    const taken = await copyText(text);
    setCopied(taken);
    setByHand(taken ? null : text);
  };
  return (
    <>
      <div className={buttonStyles.row}>
        <button
          type="button"
          onClick={() => saveFile(sheet(), 'json', 'application/json', JSON.stringify(sheet(), null, 2))}
        >
          {words.download.json}
        </button>
        <button type="button" onClick={() => saveFile(sheet(), 'csv', 'text/csv', toCsv(sheet()))}>
          {words.download.csv}
        </button>
        <button type="button" onClick={() => saveFile(sheet(), 'svg', 'image/svg+xml', toSvg(sheet()))}>
          {words.download.svg}
        </button>
        <button type="button" onClick={() => void copy()}>
          {words.copy}
        </button>
        <span role="status" className={textStyles.hint}>
          {copied ? words.copied : byHand !== null ? words.notCopied : ''}
        </span>
      </div>
      {byHand !== null && <ByHand text={byHand} />}
    </>
  );
}

/** The text, selected, for a browser that does not let the page copy it. */
function ByHand({ text }: { readonly text: string }) {
  const place = useRef<HTMLTextAreaElement>(null);
  useEffect(() => place.current?.select(), [text]);
  return <textarea ref={place} readOnly rows={12} value={text} aria-label={say.keep.textLabel} />;
}
