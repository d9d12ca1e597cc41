// What the local server adds to pages: the script that reloads them, and the mistakes that keep a newer binder from being shown.

/** Addresses of the server's own; no file of a binder begins like this. */
export const liveScript = '/-/live.js';
export const liveEvents = '/-/live';

/** Reloads the page when the server says so, and when the server comes back after it was stopped. */
export const liveScriptText = `'use strict';
(function () {
  var lost = false;
  var events = new EventSource('${liveEvents}');
  events.addEventListener('changed', function () {
    location.reload();
  });
  events.addEventListener('error', function () {
    lost = true;
  });
  events.addEventListener('open', function () {
    if (lost) location.reload();
  });
})();
`;

/** The page with what is wrong at its top. The report is shown as text, whatever stands in it. */
export function withProblems(html: string, report: string): string {
  if (report === '') return html;
  const notice =
    '<section class="mistakes" role="alert" aria-label="Mistakes in the records">\n' +
    '<p><strong>This is the last good binder.</strong> The records now have mistakes:</p>\n' +
    `<pre>${escaped(report)}</pre>\n</section>\n`;
  return html.replace(/(<main\b[^>]*>)/, (open) => open + '\n' + notice);
}

/** Stands in for every page as long as there is no good binder. */
export function onlyProblems(report: string): string {
  return page(
    'No binder yet',
    `<p>The records have mistakes; the binder appears here when they are put right.</p>\n<pre>${escaped(report)}</pre>`,
  );
}

/** The list of a workshop's machines. */
export function workshopPage(machines: readonly { readonly prefix: string; readonly name: string }[]): string {
  const lines = machines.map(
    ({ prefix, name }) => `<li><a href="/${encodeURIComponent(prefix)}/index.html">${escaped(name)}</a></li>`,
  );
  return page('Workshop', `<ul>\n${lines.join('\n')}\n</ul>`);
}

function page(title: string, body: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<script src="${liveScript}" defer></script>
</head>
<body>
<main>
<h1>${escaped(title)}</h1>
${body}
</main>
</body>
</html>
`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
