import type { GenericSchema } from 'valibot';
import type { FieldNames } from '../problems.ts';

interface Shape {
  readonly entries?: Readonly<Record<string, unknown>>;
  readonly wrapped?: unknown;
  readonly item?: unknown;
  readonly value?: unknown;
}

const inner = (schema: unknown, step: string | number): unknown => {
  const shape = schema as Shape | undefined;
  if (shape === undefined) return undefined;
  if (shape.wrapped !== undefined) return inner(shape.wrapped, step);
  if (shape.entries !== undefined) return shape.entries[String(step)];
  return shape.item ?? shape.value;
};

const unwrapped = (schema: unknown): Shape | undefined => {
  const shape = schema as Shape | undefined;
  return shape?.wrapped === undefined ? shape : unwrapped(shape.wrapped);
};

/** The names of the fields a schema allows at a path. */
export const fieldsOf =
  (schema: GenericSchema): FieldNames =>
  (path) =>
    Object.keys(unwrapped(path.reduce<unknown>(inner, schema))?.entries ?? {});
