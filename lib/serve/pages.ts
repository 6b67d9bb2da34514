import type { Problem } from '../model/index.ts';

/** Reloads the window when the guide was built anew. */
export const LIVE_SCRIPT = (events: string): string =>
  `new EventSource(${JSON.stringify(events)}).addEventListener('refresh', () => location.reload());\n`;

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const item = ({ file, line, wrong, mend }: Problem): string =>
  `<li><p class="where">${escaped(file)}${line === undefined ? '' : `, line ${line}`}</p>` +
  `<p class="wrong">${escaped(wrong)}</p><p>${escaped(mend)}</p></li>`;

/** What stands in the place of every page while the content has problems. */
export const problemsPage = (problems: readonly Problem[], live: string): string => `<!doctype html>
<html lang="en-GB"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>To mend</title>
<style>
body{background:#f5efe4;color:#352e27;font:17px/1.5 Georgia,serif;margin:0 auto;max-width:44rem;padding:3rem 1.25rem}
h1{font-weight:400;font-size:2.4rem;line-height:1.1;border-bottom:2px dashed #97482a;padding-bottom:1rem}
ol{list-style:none;padding:0}li{border-bottom:1px solid #c6b9a5;padding:1rem 0}p{margin:0}
.where{font:13px/1.5 system-ui,sans-serif;color:#6c6155}.wrong{font-size:1.15rem}
</style></head><body><main><h1>${problems.length === 1 ? 'One thing' : `${problems.length} things`} to mend</h1>
<p>The guide as it was is kept. This page goes when the files are right.</p>
<ol>${problems.map(item).join('')}</ol></main><script src="${live}"></script></body></html>
`;
