import type { ReactNode } from 'react';

interface FileKeyProps {
  readonly onFile: (file: File) => void;
  readonly children: ReactNode;
}

/** A key that has a file chosen. */
export function FileKey({ onFile, children }: FileKeyProps) {
  return (
    <label className="key jobs-way jobs-file">
      {children}
      <input
        type="file"
        accept=".json,application/json"
        onChange={({ currentTarget }) => {
          const [file] = currentTarget.files ?? [];
          currentTarget.value = ''; // so that the same file, mended meanwhile, is a new choice
          if (file !== undefined) onFile(file);
        }}
      />
    </label>
  );
}
