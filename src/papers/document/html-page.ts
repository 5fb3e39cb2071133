import { createHash } from 'node:crypto';
import { PAGE_STYLE } from './page-style';
import { escapeHtml } from './to-html';

/** One HTML file: no script, nothing from a network, and a policy inside that forbids both. */
export function htmlPage({
  title,
  language,
  body,
}: {
  title: string;
  language: string;
  body: string;
}): string {
  const style = createHash('sha256').update(PAGE_STYLE).digest('base64');
  return `<!DOCTYPE html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-${style}'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)}</title>
<style>${PAGE_STYLE}</style>
</head>
<body>
${body}
</body>
</html>
`;
}
