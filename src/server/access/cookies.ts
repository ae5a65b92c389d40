import type { Context } from 'hono'
import { getCookie, setCookie } from 'hono/cookie'
import { unlockedS } from '#server/access/unlocked.ts'

/** The longest that browsers keep one; set anew each time the app asks how it stands. @source RFC-6265BIS (5.5) */
const deviceS = 400 * 86_400

/**
 * Scripts never see them and other sites' pages never send them along. On https their names begin with `__Host-`, so that no
 * other server of the machine can set them; a token that went over plain http is not taken on https.
 */
const nameOf = (what: 'device' | 'owner', https: boolean): string => `${https ? '__Host-' : ''}twinrest-${what}`

export function bringsDevice(c: Context, https: boolean): string {
  return getCookie(c, nameOf('device', https)) ?? ''
}

export function giveDevice(c: Context, token: string, https: boolean): void {
  setCookie(c, nameOf('device', https), token, { httpOnly: true, sameSite: 'Lax', secure: https, path: '/', maxAge: deviceS })
}

export function bringsOwner(c: Context, https: boolean): string {
  return getCookie(c, nameOf('owner', https)) ?? ''
}

/** An empty token takes it away. */
export function giveOwner(c: Context, token: string, https: boolean): void {
  setCookie(c, nameOf('owner', https), token, { httpOnly: true, sameSite: 'Strict', secure: https, path: '/', maxAge: token === '' ? 0 : unlockedS })
}
