import fc from 'fast-check';

fc.configureGlobal({ seed: 20_350_701, numRuns: 30 });
