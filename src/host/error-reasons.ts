/** Why the system refused, as a short phrase that ends a message: "c012.cut: no such file". */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EISDIR: 'is a folder',
  EEXIST: 'a part of the path is not a folder',
  ENOTDIR: 'a part of the path is not a folder',
  EACCES: 'permission denied',
  EPERM: 'permission denied',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the share of the disk is used up',
  EFBIG: 'too large for the disk',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links lead round in a circle',
  EMFILE: 'too many files are open',
  ENFILE: 'too many files are open',
  EBUSY: 'in use by another program',
  ETXTBSY: 'in use by another program',
  EIO: 'the disk does not answer',
  ERR_INVALID_ARG_VALUE: 'the name holds a character that no file name may hold',
};

export const TOO_LARGE = 'is larger than 8 MB';

/** The phrase for an error that a call of the file system threw. */
export function reasonOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException | null)?.code;
  return (code !== undefined && REASONS[code]) || `the system refuses (${code ?? String(error)})`;
}
