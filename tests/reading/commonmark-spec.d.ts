/** Types of the examples that come with the CommonMark specification. */
declare module 'commonmark-spec' {
  const spec: { readonly tests: readonly { readonly markdown: string; readonly number: number }[] };
  export default spec;
}
