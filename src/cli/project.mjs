import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that holds package.json. */
export const projectFolder = fileURLToPath(new URL('../..', import.meta.url));

/**
 * The full path of something in the project.
 *
 * @param {...string} parts
 */
export const inProject = (...parts) => join(projectFolder, ...parts);
