// Other devices of the local network, let in only when the user starts with --lan: each by a code that is shown in the terminal and serves once.
import { randomInt } from 'node:crypto';
import { BlockList, isIPv4 } from 'node:net';
import { networkInterfaces } from 'node:os';
import { isSame, newKey } from './key';

/** Of RFC 1918 (private networks) and RFC 3927 (without a router). */
const privateNetworks = new BlockList();
for (const [network, prefix] of [
  ['10.0.0.0', 8],
  ['172.16.0.0', 12],
  ['192.168.0.0', 16],
  ['169.254.0.0', 16],
] as const)
  privateNetworks.addSubnet(network, prefix);

const isPrivate = (address: string): boolean => isIPv4(address) && privateNetworks.check(address);

export const isLoopback = (address: string | undefined): boolean => /^(?:::ffff:)?127\./.test(address ?? '');

const mostWrong = 5;

export interface LanDoor {
  /** Of this machine, in the local network. */
  readonly addresses: () => readonly string[];
  /** Whether somebody at this address may ask at all: this machine, or a device of the local network. */
  readonly isNear: (address: string | undefined) => boolean;
  /** Of the devices that were let in since the program started. */
  readonly keys: () => readonly string[];
  /** A key for the device that gives the code of now, which then is used up; undefined for any other. */
  readonly letIn: (code: string) => string | undefined;
}

const newCode = (): string => String(randomInt(100_000_000)).padStart(8, '0');

/**
 * `tell` shows the code of now to the user, at once and whenever there is another. `isInside`: whether an address belongs to a network whose
 * devices may ask.
 */
export function openLanDoor(
  tell: (code: string, why: 'first' | 'used' | 'guessed') => void,
  isInside: (address: string) => boolean = isPrivate,
): LanDoor {
  const keys: string[] = [];
  let [code, wrong] = [newCode(), 0];
  const renew = (why: 'used' | 'guessed'): void => {
    [code, wrong] = [newCode(), 0];
    tell(code, why);
  };
  tell(code, 'first');
  return {
    addresses: () =>
      Object.values(networkInterfaces()).flatMap((ofOne) =>
        (ofOne ?? []).flatMap(({ address, family, internal }) => (!internal && family === 'IPv4' && isInside(address) ? [address] : [])),
      ),
    isNear: (address) => isLoopback(address) || isInside((address ?? '').replace(/^::ffff:/, '')),
    keys: () => keys,
    letIn: (given) => {
      if (!isSame(given.replace(/\D/g, ''), code)) {
        wrong += 1;
        if (wrong >= mostWrong) renew('guessed');
        return undefined;
      }
      const key = newKey();
      keys.push(key);
      renew('used');
      return key;
    },
  };
}
