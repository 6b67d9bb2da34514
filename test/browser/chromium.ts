import { existsSync } from 'node:fs';
import { mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Browser, chromium } from 'playwright-core';

/** A browser that came with `npm ci`: no system package, no download. `CHROMIUM_PATH` names another. */
export interface UnpackedBrowser {
  readonly executable: string;
  readonly env: Readonly<Record<string, string>>;
}

const packageVersion = async (): Promise<string> => {
  const require = createRequire(import.meta.url);
  const root = path.join(path.dirname(require.resolve('@sparticuz/chromium')), '..', '..', 'package.json');
  return (JSON.parse(await readFile(root, 'utf8')) as { version: string }).version;
};

/** The package unpacks into the system's temporary folder under fixed names: lend it one of ours, for the moment. */
const unpackInto = async (folder: string): Promise<void> => {
  const before = { TMPDIR: process.env.TMPDIR, AWS_LAMBDA_JS_RUNTIME: process.env.AWS_LAMBDA_JS_RUNTIME };
  const library = { LD_LIBRARY_PATH: process.env.LD_LIBRARY_PATH, FONTCONFIG_PATH: process.env.FONTCONFIG_PATH };
  process.env.TMPDIR = folder;
  process.env.AWS_LAMBDA_JS_RUNTIME = 'nodejs20.x';
  try {
    const { default: packaged } = await import('@sparticuz/chromium');
    await packaged.executablePath();
  } finally {
    for (const [name, value] of Object.entries({ ...before, ...library })) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  }
};

const fontsConfig = (folder: string): string => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${path.join(folder, 'fonts')}</dir>
  <cachedir>${path.join(folder, 'fonts-cache')}</cachedir>
</fontconfig>
`;

/** Unpacks the browser once into a folder keyed by its version. */
export const unpackBrowser = async (): Promise<UnpackedBrowser> => {
  const own = process.env.CHROMIUM_PATH;
  if (own !== undefined) return { executable: own, env: {} };
  const folder = path.join(tmpdir(), `wayfold-chromium-${await packageVersion()}`);
  if (!existsSync(folder)) {
    const beside = `${folder}.${process.pid}`;
    await mkdir(beside, { recursive: true });
    await unpackInto(beside);
    await writeFile(path.join(beside, 'fonts.conf'), fontsConfig(folder));
    await rename(beside, folder).catch(() => rm(beside, { recursive: true, force: true }));
  }
  return {
    executable: path.join(folder, 'chromium'),
    env: {
      LD_LIBRARY_PATH: path.join(folder, 'al2023', 'lib'),
      FONTCONFIG_FILE: path.join(folder, 'fonts.conf'),
      HOME: folder,
    },
  };
};

/** Starts the browser, headless. */
export const launchBrowser = async (): Promise<Browser> => {
  const { executable, env } = await unpackBrowser();
  return chromium.launch({
    executablePath: executable,
    args: ['--no-sandbox', '--font-render-hinting=none', '--disable-dev-shm-usage'],
    ...(Object.keys(env).length > 0 ? { env: { ...(process.env as Record<string, string>), ...env } } : {}),
  });
};
