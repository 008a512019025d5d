import {
  createSourceFile,
  forEachChild,
  isBindingElement,
  isIdentifier,
  isImportSpecifier,
  isParameter,
  isPropertyAccessExpression,
  isPropertyAssignment,
  isPropertySignature,
  isVariableDeclaration,
  ScriptTarget,
  type Node,
} from 'typescript';

/** Globals by which a calculation would reach for a clock, chance, a page or the machine. */
const FORBIDDEN = [
  'console',
  'crypto',
  'Date',
  'document',
  'fetch',
  'globalThis',
  'localStorage',
  'Math.random',
  'performance',
  'process',
  'setInterval',
  'setTimeout',
  'window',
];

/** Every use of a forbidden global in a file, one line each with its place. */
export function purityFaults(path: string, text: string): readonly string[] {
  const file = createSourceFile(path, text, ScriptTarget.Latest, true);
  const nodes = withDescendants(file);
  // A file's own `document` is not the browser's.
  const own = new Set(nodes.filter(isDeclaredName).map((node) => node.getText()));
  return nodes
    .filter((node) => FORBIDDEN.includes(nameUsed(node)) && !own.has(nameUsed(node)))
    .map((node) => {
      const { line } = file.getLineAndCharacterOfPosition(node.getStart());
      return `${path}:${line + 1} uses ${nameUsed(node)}, but here the same input must give the same result, whenever and wherever`;
    });
}

function withDescendants(node: Node): readonly Node[] {
  const nodes: Node[] = [node];
  forEachChild(node, (child) => {
    nodes.push(...withDescendants(child));
  });
  return nodes;
}

/** The global that a node may stand for: `process`, `Math.random`; empty where it stands for none. */
function nameUsed(node: Node): string {
  if (isPropertyAccessExpression(node)) return node.getText();
  return isIdentifier(node) && !isNameOfMember(node) ? node.text : '';
}

const isNameOfMember = (node: Node): boolean => {
  const { parent } = node;
  return (
    (isPropertyAccessExpression(parent) ||
      isPropertyAssignment(parent) ||
      isPropertySignature(parent)) &&
    parent.name === node
  );
};

const isDeclaredName = (node: Node): boolean => {
  if (!isIdentifier(node)) return false;
  const { parent } = node;
  return (
    (isVariableDeclaration(parent) ||
      isParameter(parent) ||
      isBindingElement(parent) ||
      isImportSpecifier(parent)) &&
    parent.name === node
  );
};
