import { afterAll, beforeAll, describe } from 'vitest';
import { openStore, type OpenStore } from '#persistence/open-store.js';
import { databasesUnderTest, type OpenDatabase } from '../support/databases.js';
import { storesKeepTheirPromises } from '../support/planning/stores-contract.js';

describe.each(databasesUnderTest())('stores on the $name', (kind) => {
  let database: OpenDatabase;
  let store: OpenStore;
  beforeAll(async () => {
    database = await kind.open();
    store = await openStore(database.url, console.error);
  });
  afterAll(async () => {
    await store.close();
    await database.close();
  });
  storesKeepTheirPromises(() => store);
});
