// What the system says about a file, in words for the person whose file it is.

const causes: Readonly<Record<string, string>> = {
  EACCES: 'this user may not read or write there',
  EPERM: 'this user may not read or write there',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full',
  ENOENT: 'its folder is gone',
  ENOTDIR: 'its folder is gone',
  EISDIR: 'it is a folder',
  ELOOP: 'it is a link that leads back to itself',
};

export const hasCode = (thrown: unknown, code: string): boolean => thrown instanceof Error && 'code' in thrown && thrown.code === code;

/** What is no trouble of the system's stays what it is. */
export function inWords(path: string, thrown: unknown): unknown {
  if (!(thrown instanceof Error && 'code' in thrown)) return thrown;
  return new Error(`the file ${path} cannot be read or written: ${causes[String(thrown.code)] ?? thrown.message}.`, { cause: thrown });
}
