// A text as a file to save, made in the page: nothing leaves the machine.
import { useEffect, useMemo, useRef } from 'preact/hooks';

export interface OwnFile {
  readonly name: string;
  /** Of the file, such as text/calendar. */
  readonly type: string;
  readonly text: string;
}

interface FileLinkProps {
  readonly file: OwnFile;
  readonly label: string;
  /** Begins to save without a further press; the link stays for a browser that does not allow that. */
  readonly atOnce?: boolean;
}

export function FileLink({ file, label, atOnce = false }: FileLinkProps) {
  const link = useRef<HTMLAnchorElement>(null);
  const address = useMemo(() => URL.createObjectURL(new Blob([file.text], { type: `${file.type};charset=utf-8` })), [file]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  useEffect(() => {
    if (atOnce) link.current?.click();
  }, [address, atOnce]);
  return (
    <a class="file" ref={link} href={address} download={file.name}>
      {label}
    </a>
  );
}
