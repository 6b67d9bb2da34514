import { coloursOfPhoto } from '../../lib/photo/index.ts';

/** Reads one photo in a process of its own and prints the most memory it ever held, in megabytes. */
const [folder = '', name = ''] = process.argv.slice(2);
const read = await coloursOfPhoto(folder, name);
if (!read.ok) throw new Error(read.trouble.wrong);
process.stdout.write(`${Math.round(process.resourceUsage().maxRSS / 1024)}\n`);
