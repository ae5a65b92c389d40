import { sayErrno } from '#words/say-errno.ts'
import type { Say } from '#words/wording.ts'

/** What is amiss before anything is asked: the request, the command, the place it is run in. */
export const doorRefusals: { readonly [code: string]: Say } = {
  'not-json': (facts, w) => `${typeof facts.file === 'string' ? `${w.text(facts.file)} is` : 'This is'} not JSON${typeof facts.where === 'string' ? `: ${w.text(facts.where)}` : ''}; check brackets, commas and quotes.`,
  'body-broken-off': () => 'The request broke off before its end; send it again.',
  'too-deep': (facts, w) => `It holds lists in lists deeper than ${w.number(facts.needed)} levels; give it flatter.`,
  'letter-cut': () => 'A text in the request holds half a character; send whole ones.',
  'json-needed': () => 'Send JSON, with the content type application/json.',
  'unknown-calculation': (facts, w) => `There is no calculation named '${w.text(facts.given)}'; known are ${w.text(facts.needed)}.`,
  'unknown-path': (facts, w) => `There is nothing at ${w.text(facts.given)}.`,
  'method-not-allowed': (facts, w) => `${w.text(facts.given)} is not for this address.`,
  'unknown-host': () => 'The request names a host that is not this machine.',
  'foreign-origin': () => 'The request comes from another site and was not answered.',
  'length-needed': () => 'Say how long the request is (content-length).',
  'body-too-large': (facts, w) => `The request is larger than ${w.number(facts.mostBytes)} bytes; larger arrays go through the command twinrest calc.`,
  'bad-port': (facts, w) => `Port: '${w.text(facts.given)}' is no port; give a whole number from 0 to 65535.`,
  'port-in-use': (facts, w) => `Port ${w.text(facts.given)} is taken by another program; stop it, or give another with --port.`,
  'port-not-allowed': (facts, w) => `Port ${w.text(facts.given)} may not be opened here; give one above 1023 with --port.`,
  'unknown-option': (facts, w) => `'${w.text(facts.given)}' is not an option here; known are ${w.text(facts.needed)}.`,
  'option-empty': (facts, w) => `${w.text(facts.given)} needs a value after it.`,
  'file-not-there': (facts, w) => `There is no file ${w.text(facts.given)}.`,
  'file-not-readable': (facts, w) => `${w.text(facts.given)} cannot be read: ${sayErrno(facts.reason)}. Give another file, or - for standard input.`,
  'file-not-writable': (facts, w) => `${w.text(facts.given)} cannot be written: ${sayErrno(facts.reason)}. Give another file.`,
  'no-vise': (_facts, w) => `The shop has no ${w.vise} yet: add one under Shop, or, for a setup, give its sizes in the file under vise.`,
  'which-vise': (facts, w) => `The shop has several ${w.vise}s: name one with --vise (${w.text(facts.needed, 'or')}).`,
  'unknown-vise': (facts, w) => `There is no ${w.vise} '${w.text(facts.given)}'; there are ${w.text(facts.needed)}.`,
  'no-calculation-input': () => 'Nothing came on standard input: pass a case or an array of cases as JSON.',
}
