/** What trainees read, watch or hear, and what no browser takes for a page of its own, by the ending of its name. */
export const moduleFileKinds: readonly string[] = [
  ...['pdf', 'txt', 'odt', 'odp', 'docx', 'pptx'],
  ...['mp4', 'm4v', 'mov', 'webm', 'mp3', 'm4a', 'ogg', 'wav'],
  ...['vtt', 'srt'],
];

/** Whether a file may be handed out as it is: nothing that a browser opens from the site as a page, and so would run. */
export function isToHandOut(file: string): boolean {
  return moduleFileKinds.some((kind) => file.toLowerCase().endsWith(`.${kind}`));
}
