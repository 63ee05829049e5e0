/** The two streams: data on standard output, everything else on standard error; and whether words may have colour. */
import pc from 'picocolors';
import { type Page, plainStyle, type Style, wrap } from '../../render/layout.ts';

/** What went wrong, where and what to do about it. */
export interface Complaint {
  readonly where: string;
  readonly message: string;
  readonly cure?: string;
}

const pageWidth = { least: 80, most: 100, usual: 96 };

/** The page for standard output: as wide as the window within bounds, coloured only where someone looks at it. */
export function pageFor(colour: 'auto' | 'always' | 'never'): Page {
  const columns = process.stdout.columns ?? pageWidth.usual;
  const width = Math.min(pageWidth.most, Math.max(pageWidth.least, columns));
  return { width, style: wantsColour(colour) ? colours() : plainStyle };
}

/** A page for a file: never coloured. */
export const pageForFile: Page = { width: pageWidth.usual, style: plainStyle };

export function complain({ where, message, cure }: Complaint): void {
  const text = `${where}: ${message}${cure === undefined ? '' : `\n  ${cure}`}`;
  process.stderr.write(`${wrap(text, pageWidth.usual).join('\n')}\n`);
}

export const remark = (text: string): void => void process.stderr.write(`${wrap(text, pageWidth.usual).join('\n')}\n`);

function wantsColour(colour: 'auto' | 'always' | 'never'): boolean {
  if (colour !== 'auto') return colour === 'always';
  const { NO_COLOR, FORCE_COLOR, TERM } = process.env;
  if (NO_COLOR) return false;
  if (FORCE_COLOR && FORCE_COLOR !== '0') return true;
  return process.stdout.isTTY === true && TERM !== 'dumb';
}

function colours(): Style {
  const { bold, cyan, dim, red, yellow } = pc.createColors(true);
  return { must: (text) => bold(red(text)), should: yellow, note: cyan, strong: bold, faint: dim };
}
