// Who may look into whom: the house as a table. scripts/rooms.mjs reads it and fails on any other import.
// `test` files may also use what stands under `inTests`.

export const rooms = {
  // What things are. If you want to compute here, you want engine; if you want a table, reference.
  model: { imports: [], packages: ['zod'] },
  // How a code is said to a person. A second language is a second file here. No sums, no decisions: only words.
  words: { imports: ['model'], packages: [] },
  // What the books say, each row with source and standing. If you want to conclude from it, you want engine.
  reference: { imports: ['model'], packages: [] },
  // What follows. A table is an argument, so that the shop's own table takes the same road as the book's.
  engine: { imports: ['model'], packages: [] },
  // Drawings as data. What is drawn is passed in; if you need to decide something about the trade, ask engine first.
  drafting: { imports: ['model', 'words'], packages: ['uqr'] },
  // Keeps facts, never conclusions. If you want to derive here, keep the facts and derive in engine.
  store: { imports: ['model'], packages: ['kysely', 'better-sqlite3', 'pg'] },
  // What a person does. The only room that sees facts, books and conclusions at once. `highs` solves behind the port that engine/make/solver.ts declares.
  tasks: { imports: ['model', 'words', 'reference', 'engine', 'drafting', 'store'], packages: ['csv-parse', 'csv-stringify', '@peculiar/x509', '@peculiar/asn1-x509', '@peculiar/asn1-schema', 'reflect-metadata', 'highs'] },
  // A door: parse, call one task, word the answer. An `if` about the trade belongs in a task or the engine.
  server: { imports: ['model', 'words', 'store', 'tasks'], packages: ['hono', '@hono/node-server', '@hono/zod-openapi', 'rate-limiter-flexible'] },
  // A door that runs the engine itself, on each key, and asks the server by its HTTP interface alone.
  web: {
    imports: ['model', 'words', 'reference', 'engine', 'drafting'],
    packages: ['react', 'react-dom', '@tanstack/react-virtual', 'idb', '@fontsource-variable/atkinson-hyperlegible-next', 'highs'],
  },
  // A door: parse, call one task, word the answer.
  cli: { imports: ['model', 'words', 'store', 'tasks', 'server'], packages: ['commander'] },
}

/** Rooms compiled and checked without DOM and Node. */
export const pure = ['model', 'words', 'reference', 'engine', 'drafting']

export const inTests = { packages: ['vitest', 'fast-check', 'jsqr'], node: true }
