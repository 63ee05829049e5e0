/** Applies exact edits to a section, and refuses one whose words do not stand there exactly once. */
export function edited(section: string, edits: readonly { readonly find: string; readonly replace: string }[]): string {
  return edits.reduce((text, { find, replace }) => {
    const parts = text.split(find);
    if (parts.length !== 2) throw new Error(`stands ${parts.length - 1} times in the section: ${find}`);
    return parts.join(replace);
  }, section);
}
