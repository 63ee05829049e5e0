/** Path patterns of the project file: a plain path, a folder, or `*`, `**`, `?` and `{a,b}`. */

/** Does the pattern name this path? Both are relative to the project file's folder, with forward slashes. */
export function matchesPath(pattern: string, path: string): boolean {
  const plain = pattern.replace(/^\.\//, '').replace(/\/$/, '');
  return path === plain || path.startsWith(`${plain}/`) || asExpression(plain).test(path);
}

function asExpression(pattern: string): RegExp {
  const pieces = pattern.match(/\*\*\/?|\*|\?|\{[^{}]*\}|[^*?{}]+|./gu) ?? [];
  return new RegExp(`^${pieces.map(asSource).join('')}$`, 'u');
}

function asSource(piece: string): string {
  if (piece === '**/') return '(?:[^/]+/)*';
  if (piece === '**') return '.*';
  if (piece === '*') return '[^/]*';
  if (piece === '?') return '[^/]';
  if (/^\{.*\}$/.test(piece)) return `(?:${piece.slice(1, -1).split(',').map(literal).join('|')})`;
  return literal(piece);
}

const literal = (text: string): string => text.replace(/[\\^$.*+?()[\]{}|/]/gu, '\\$&');
