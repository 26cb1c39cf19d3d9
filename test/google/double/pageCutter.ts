// How the platform's page service is reported to cut comments out of page scripts, in two models: other projects saw it cut in
// template literals (enuchi/React-Google-Apps-Script, issues 157 and 170, already in what getContent() gives), some of them in
// plain strings too. Neither model knows regular expressions or template literals.

/** Told apart by whether a comment can begin inside "..." and '...'. */
export type PageCutter = 'knows quotes' | 'knows no quotes';
export const pageCutters: readonly PageCutter[] = ['knows quotes', 'knows no quotes'];

const comment = '//[^\\n]*|/\\*[^]*?(?:\\*/|$)';
const text = `"(?:[^"\\\\]|\\\\[^])*"?|'(?:[^'\\\\]|\\\\[^])*'?`;
const cuts: Readonly<Record<PageCutter, RegExp>> = {
  'knows quotes': new RegExp(`(${text})|${comment}`, 'g'),
  'knows no quotes': new RegExp(`()${comment}`, 'g'),
};

/** The page as the service hands it on. */
export const cutPage = (page: string, cutter: PageCutter): string =>
  page.replace(
    /(<script\b[^>]*>)([^]*?)(<\/script>)/gi,
    (_, open: string, script: string, close: string) => open + script.replace(cuts[cutter], '$1') + close,
  );
