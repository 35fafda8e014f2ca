import { beforeEach, describe } from 'vitest';
import { memoryStore } from '../support/planning/memory-store.js';
import { storesKeepTheirPromises, type Stores } from '../support/planning/stores-contract.js';

/** The fakes that other tests rely on are held to the same promises as the database. */
describe('stores in memory', () => {
  let stores: Stores;
  beforeEach(() => {
    stores = memoryStore();
  });
  storesKeepTheirPromises(() => stores);
});
