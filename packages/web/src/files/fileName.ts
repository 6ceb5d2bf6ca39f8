/** A file name for a job: its name in plain letters, so that every system takes it; 'job.json' where nothing is left of it. */
export function jobFileName(name: unknown): string {
  const plain = (typeof name === 'string' ? name : '')
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .replace(/-+$/, '');
  return `${plain === '' ? 'job' : plain}.json`;
}
