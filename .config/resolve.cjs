/** Tells the import fence where `#units/cents.js` lies in the sources: libs/units/cents.ts. */
const { resolve } = require('node:path');

module.exports = {
  resolve: {
    extensions: ['.ts', '.tsx', '.js', '.json', '.css'],
    extensionAlias: { '.js': ['.ts', '.tsx', '.js', '.d.ts'] },
    importsFields: [],
    alias: [
      { name: '#apps/*', alias: resolve('apps/*') },
      { name: '#*', alias: resolve('libs/*') },
    ],
  },
};
