/**
 * The state of this device's records in words, derived from facts and never stored.
 *
 * | storage fails | loaded | unsaved | connected | waiting | state                    |
 * | ------------- | ------ | ------- | --------- | ------- | ------------------------ |
 * | yes           | any    | any     | any       | any     | not saved on this device |
 * | no            | no     | any     | any       | any     | loading                  |
 * | no            | yes    | > 0     | any       | any     | saving                   |
 * | no            | yes    | 0       | no        | any     | offline                  |
 * | no            | yes    | 0       | yes       | > 0     | on this device only      |
 * | no            | yes    | 0       | yes       | 0       | on the server            |
 *
 * "Unsaved" counts updates that are not proven to be on this device's disk,
 * "waiting" records that the server has not proven to hold on its own.
 */

/** What is known of one document on this device. */
export interface DocumentFacts {
  /** Its local copy has been read, or cannot be had. */
  readonly loaded: boolean;
  /** The device's storage refused the last attempt. */
  readonly storageFails: boolean;
  readonly unsaved: number;
  /** There is a socket, or there is none because others have their turn or because the first one is only being opened. */
  readonly connected: boolean;
  /** The server has told, since the socket opened (or before it was closed for another's turn), what its log holds. */
  readonly acknowledged: boolean;
  /** Records here that the server's log is not proven to hold. */
  readonly waiting: number;
  /** The server's latest refusal, as a sentence. */
  readonly refusal?: string;
}

export type SyncStatus =
  | { readonly state: "loading" }
  | { readonly state: "not saved on this device"; readonly waiting: number }
  | { readonly state: "saving" }
  | { readonly state: "offline"; readonly since: number; readonly waiting: number }
  | { readonly state: "on this device only"; readonly waiting: number }
  | { readonly state: "on the server" };

/**
 * @param since when the connection was last lost (or the device started without one), ms since the epoch
 */
export function syncStatus(documents: readonly DocumentFacts[], since: number): SyncStatus {
  const waiting = documents.reduce((sum, document) => sum + document.waiting, 0);
  if (documents.some((document) => document.storageFails)) return { state: "not saved on this device", waiting };
  if (documents.length === 0 || documents.some((document) => !document.loaded)) return { state: "loading" };
  if (documents.some((document) => document.unsaved > 0)) return { state: "saving" };
  if (documents.some((document) => !document.connected)) return { state: "offline", since, waiting };
  if (waiting > 0 || documents.some((document) => !document.acknowledged)) {
    return { state: "on this device only", waiting };
  }
  return { state: "on the server" };
}

/** Records (one clock tick each) that `held` lacks of `local`: both are clocks by writer. */
export function waitingRecords(local: ReadonlyMap<number, number>, held: ReadonlyMap<number, number>): number {
  let waiting = 0;
  for (const [client, clock] of local) waiting += Math.max(0, clock - (held.get(client) ?? 0));
  return waiting;
}
