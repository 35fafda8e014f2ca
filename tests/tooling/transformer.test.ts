import 'reflect-metadata';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';

function recorded(): PropertyDecorator & MethodDecorator {
  return () => undefined;
}

class Bed {
  @recorded()
  name!: string;

  @recorded()
  plant(_count: number, _on: Date): string {
    return this.name;
  }
}

test('the test transformer writes the decorator metadata that injection and entities rely on', () => {
  const typeOf = (key: string, of: string): unknown =>
    Reflect.getMetadata(`design:${key}`, Bed.prototype, of) as unknown;
  expect(typeOf('type', 'name')).toBe(String);
  expect(typeOf('paramtypes', 'plant')).toEqual([Number, Date]);
});

test('a built file is found by its # name from a source file, for worker threads', () => {
  const path = createRequire(import.meta.url).resolve('#units/cents.js');
  expect(path).toMatch(/dist[\\/]libs[\\/]units[\\/]cents\.js$/);
});
