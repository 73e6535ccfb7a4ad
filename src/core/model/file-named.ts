/** The file that a name of an author's stands for, below the folder of what names it; `undefined` for plain words. */
export function fileNamed(name: string): string | undefined {
  const isFile = /^\S+\.[a-z0-9]{2,5}$/i.test(name) && !/^[a-z]+:|^\/\//i.test(name);
  return isFile ? name.replace(/^(\.\/)+/, '') : undefined;
}
