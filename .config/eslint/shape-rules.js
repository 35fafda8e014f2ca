const FUNCTIONS = 'FunctionDeclaration, FunctionExpression, ArrowFunctionExpression';

const isInjected = (node) =>
  node.parent.type === 'MethodDefinition' &&
  (node.parent.kind === 'constructor'
    ? node.parent.parent.parent.decorators.length > 0
    : node.parent.decorators.length > 0);

/** What a callback is given is its caller's choice. */
const isCallback = (node) => node.parent.type === 'CallExpression';

/** A framework fills the parameters of a decorated class's constructor and of a decorated method. */
const fewParameters = {
  meta: {
    type: 'suggestion',
    schema: [{ type: 'object', properties: { max: { type: 'integer' } } }],
    messages: { tooMany: '{{count}} parameters; more than {{max}} belong in one options object.' },
  },
  create: (context) => {
    const { max } = context.options[0];
    return {
      [FUNCTIONS](node) {
        const count = node.params.length;
        if (count <= max || isCallback(node) || isInjected(node)) return;
        context.report({ node, messageId: 'tooMany', data: { count, max } });
      },
    };
  },
};

/** `load(true)` says nothing at the call; two functions, or a union of words, do. */
const noBooleanParameter = {
  meta: {
    type: 'suggestion',
    schema: [],
    messages: { found: 'A boolean parameter: make it two functions, or a union of words.' },
  },
  create: (context) => ({
    [FUNCTIONS](node) {
      if (isCallback(node)) return;
      for (const parameter of node.params) {
        if (parameter.typeAnnotation?.typeAnnotation.type !== 'TSBooleanKeyword') continue;
        context.report({ node: parameter, messageId: 'found' });
      }
    },
  }),
};

export const plugin = {
  rules: { 'few-parameters': fewParameters, 'no-boolean-parameter': noBooleanParameter },
};
