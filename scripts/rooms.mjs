// Holds every import in src/ against the table of doors in rooms.config.mjs, and looks for circles of files.
import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { builtinModules } from 'node:module'
import { dirname, join, relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseSync } from 'vite'
import { inTests, pure, rooms } from '../rooms.config.mjs'

const top = resolve(dirname(fileURLToPath(import.meta.url)), '..')
const src = join(top, 'src')
const files = readdirSync(src, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
  .map((entry) => join(entry.parentPath, entry.name))
const complaints = []
const graph = new Map()

for (const file of files) {
  const name = relative(src, file), room = name.split('/')[0], isTest = /\.test\.tsx?$/.test(name)
  const say = (what) => complaints.push(`src/${name}: ${what}`)
  const rule = rooms[room]
  if (!rule) { say(`stands in no room of rooms.config.mjs (${Object.keys(rooms).join(', ')})`); continue }
  const text = readFileSync(file, 'utf8')
  const { module: parsed, errors } = parseSync(file, text)
  if (errors.length > 0) { say(`cannot be read: ${errors[0].message}`); continue }
  const near = []
  for (const [wanted, typeOnly] of importsOf(parsed)) {
    if (wanted.startsWith('node:') || builtinModules.includes(wanted)) {
      if (pure.includes(room) && !(isTest && inTests.node)) say(`a pure room asks for ${wanted}; pass in what you need`)
    } else if (wanted.startsWith('#') || wanted.startsWith('.')) {
      const target = wanted.startsWith('#') ? join(src, wanted.slice(1)) : resolve(dirname(file), wanted)
      const targetRoom = relative(src, target).split('/')[0]
      const allowed = targetRoom === room || rule.imports.includes(targetRoom)
      const asset = /\.(css|svg|json)(\?.*)?$/.test(wanted) || wanted.includes('?')
      if (targetRoom.startsWith('..')) { if (!isTest) say(`looks outside src for ${wanted}`) }
      else if (!allowed) say(`may not look into ${targetRoom} (${wanted}); ${room} sees ${rule.imports.join(', ') || 'nobody'}`)
      if (!asset && !existsSync(target)) say(`${wanted} is not there; imports name the file with its ending`)
      if (!typeOnly && existsSync(target)) near.push(target)
    } else {
      const pack = wanted.startsWith('@') ? wanted.split('/').slice(0, 2).join('/') : wanted.split('/')[0]
      if (!rule.packages.includes(pack) && !(isTest && inTests.packages.includes(pack))) say(`package ${pack} is not let into ${room}`)
    }
  }
  if (parsed.staticExports.some((statement) => statement.entries.some((e) => e.exportName.kind === 'Default'))) say('has a default export; name it')
  graph.set(file, near)
}
for (const circle of circlesIn(graph)) complaints.push(`circle: ${circle.map((f) => relative(top, f)).join(' → ')}`)

if (files.length === 0) complaints.push('no file was read: the check itself is broken')
if (complaints.length > 0) { console.error(complaints.join('\n')); process.exit(1) }
console.log(`rooms: ${files.length} files keep to the table of doors`)

function importsOf(parsed) {
  return [
    ...parsed.staticImports.map((i) => [i.moduleRequest.value, i.entries.length > 0 && i.entries.every((e) => e.isType)]),
    ...parsed.staticExports.flatMap((x) => x.entries.filter((e) => e.moduleRequest).map((e) => [e.moduleRequest.value, e.isType])),
  ]
}

function circlesIn(edges) {
  const state = new Map(), found = []
  const visit = (node, path) => {
    state.set(node, 'open')
    for (const next of edges.get(node) ?? []) {
      if (state.get(next) === 'open') found.push([...path.slice(path.indexOf(next)), next])
      else if (!state.has(next)) visit(next, [...path, next])
    }
    state.set(node, 'done')
  }
  for (const node of edges.keys()) if (!state.has(node)) visit(node, [node])
  return found
}
