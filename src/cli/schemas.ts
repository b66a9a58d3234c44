/** The JSON Schemas in public/, made from the schemas that the code itself reads with. */
import { toJsonSchema } from '@valibot/to-json-schema';
import { scenarioSchema } from '../scenario/schema.ts';
import { playSchema } from './playOutput.ts';

const text = (schema: Parameters<typeof toJsonSchema>[0], title: string): string => {
  const json = toJsonSchema(schema, { typeMode: 'input', errorMode: 'ignore' });
  return `${JSON.stringify({ ...json, title }, null, 2)}\n`;
};

/** File name in public/ → its text. */
export const schemaFiles: Readonly<Record<string, string>> = {
  'scenario.schema.json': text(scenarioSchema, 'Scenario, format 1'),
  'play.schema.json': text(playSchema, 'Output of play'),
};
