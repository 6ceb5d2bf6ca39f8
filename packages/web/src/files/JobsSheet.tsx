import { SheetFrame } from '../machine/SheetFrame.tsx';
import type { Kept } from '../storage/kept.ts';
import type { Shelf } from '../storage/shelf.ts';
import { files as words } from '../words/files.ts';
import { Examples } from './Examples.tsx';
import { FileKey } from './FileKey.tsx';
import { JobShelf } from './JobShelf.tsx';
import '../fields/key.css';
import './jobsSheet.css';

interface JobsSheetProps {
  readonly shelf: Shelf;
  readonly onFile: (file: File) => void;
  readonly onKept: (kept: Kept) => void;
  readonly onEmpty: () => void;
  readonly onThreeMinutes: () => void;
  readonly onTemplates: () => void;
  readonly onClose: () => void;
}

/** The jobs of this device, and every way to begin one or to bring one in or out. */
export default function JobsSheet(props: JobsSheetProps) {
  const { shelf, onFile, onKept, onEmpty, onThreeMinutes, onTemplates, onClose } = props;
  return (
    <div className="jobs-sheet">
      <SheetFrame title={words.title} onClose={onClose}>
        <div className="jobs-ways">
          <button type="button" className="key jobs-way" data-do onClick={onThreeMinutes}>
            {words.threeMinutes}
            <small>{words.threeMinutesSays}</small>
          </button>
          <button type="button" className="key jobs-way" onClick={onEmpty}>
            {words.fromEmpty}
            <small>{words.fromEmptySays}</small>
          </button>
          <button type="button" className="key jobs-way" onClick={onTemplates}>
            {words.templates}
            <small>{words.templatesSays}</small>
          </button>
          <FileKey onFile={onFile}>
            {words.fromFile}
            <small>{words.fromFileSays}</small>
          </FileKey>
        </div>
        <div className="jobs-parts">
          <JobShelf shelf={shelf} onOpen={onKept} />
          <Examples onOpen={onFile} />
        </div>
      </SheetFrame>
    </div>
  );
}
