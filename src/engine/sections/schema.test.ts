import { fileURLToPath } from 'node:url';
import { toJsonSchema } from '@valibot/to-json-schema';
import { describe, expect, it } from 'vitest';
import { expectKept } from '../../../test/kept.ts';
import { FILE } from './file.ts';
import { SHARING } from './set.ts';

// Editors complete and check a train file by trains/train.schema.json, which is made from the
// reader's definitions here. It is kept there.
const KEPT = new URL('../../../trains/train.schema.json', import.meta.url);

function trainSchema(): object {
  const schema = toJsonSchema(FILE, {
    target: 'draft-2020-12',
    // JSON Schema reads a pattern as Unicode anyway; the converter refuses the flag.
    overrideAction: ({ valibotAction, jsonSchema }) =>
      valibotAction.type === 'regex' && 'requirement' in valibotAction
        ? { ...jsonSchema, pattern: (valibotAction.requirement as RegExp).source }
        : undefined,
    // What the reader checks across keys; and a set or a device is of exactly one kind.
    overrideSchema: ({ valibotSchema, jsonSchema }) => {
      if (valibotSchema.type === 'union' && jsonSchema.anyOf) {
        const { anyOf, ...rest } = jsonSchema;
        return { ...rest, oneOf: anyOf };
      }
      if ('entries' in valibotSchema && valibotSchema.entries === SHARING.entries) {
        return {
          ...jsonSchema,
          anyOf: [{ required: ['sun'] }, { required: ['ring'] }],
          dependentRequired: { pairs: ['sun'], inner: ['pairs'] },
        };
      }
      return undefined;
    },
  });
  return { title: 'A Holdturn train', ...schema };
}

describe('the schema', () => {
  it('that is kept is the one that the definitions make', () => {
    expectKept(fileURLToPath(KEPT), `${JSON.stringify(trainSchema(), null, 2)}\n`);
  });

  it('says what everything is, for the one who hovers over it', () => {
    const { properties } = trainSchema() as {
      properties: Record<string, { description?: string }>;
    };
    for (const [key, { description }] of Object.entries(properties)) {
      expect(description, key).toMatch(/\.$/);
    }
  });
});
