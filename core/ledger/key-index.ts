/** The keys of the subjects that have a readable record, by kind and by owner, and how often something of them has changed. */

/** The owner of a key is what stands before its first slash, such as a run's rider or a session's weekend; else the key itself. */
export type KeyIndex = {
  /** Takes a key in; one that is there already stays. */
  add(kind: string, key: string): void;
  /** Takes a key out. */
  remove(kind: string, key: string): void;
  /** Notes that the records of a key are others now. */
  touch(kind: string, key: string): void;
  /** The keys of a kind, or of one owner of it, sorted. */
  keys(kind: string, owner?: string): readonly string[];
  /** The owners of the keys of a kind, sorted. */
  owners(kind: string): readonly string[];
  /** Grows with each {@link KeyIndex.touch} of the kind, or of one owner of it. */
  stamp(kind: string, owner?: string): number;
};

/** An index without keys. */
export function createKeyIndex(): KeyIndex {
  const kinds = new Map<string, KindKeys>();

  const kindKeys = (kind: string): KindKeys => {
    let known = kinds.get(kind);
    if (known === undefined) {
      known = { byOwner: new Map(), stamp: 0 };
      kinds.set(kind, known);
    }
    return known;
  };
  const ownerKeys = (kind: string, key: string): OwnerKeys => {
    const { byOwner } = kindKeys(kind);
    const owner = ownerOf(key);
    let known = byOwner.get(owner);
    if (known === undefined) {
      known = { keys: new Set(), stamp: 0 };
      byOwner.set(owner, known);
    }
    return known;
  };
  const owners = ({ byOwner }: KindKeys): readonly string[] =>
    [...byOwner].flatMap(([owner, { keys }]) => (keys.size > 0 ? [owner] : [])).sort();

  return {
    add: (kind, key) => {
      const owned = ownerKeys(kind, key);
      owned.keys.add(key);
      owned.sorted = undefined;
      kindKeys(kind).sorted = undefined;
    },
    remove: (kind, key) => {
      const owned = ownerKeys(kind, key);
      owned.keys.delete(key);
      owned.sorted = undefined;
      kindKeys(kind).sorted = undefined;
    },
    touch: (kind, key) => {
      kindKeys(kind).stamp++;
      ownerKeys(kind, key).stamp++;
    },
    keys: (kind, owner) => {
      const all = kinds.get(kind);
      if (all === undefined) return [];
      if (owner !== undefined) {
        const owned = all.byOwner.get(owner);
        if (owned === undefined) return [];
        owned.sorted ??= [...owned.keys].sort();
        return owned.sorted;
      }
      all.sorted ??= [...all.byOwner.values()].flatMap(({ keys }) => [...keys]).sort();
      return all.sorted;
    },
    owners: (kind) => owners(kindKeys(kind)),
    stamp: (kind, owner) => {
      const all = kinds.get(kind);
      return (owner === undefined ? all?.stamp : all?.byOwner.get(owner)?.stamp) ?? 0;
    },
  };
}

type OwnerKeys = { readonly keys: Set<string>; sorted?: readonly string[] | undefined; stamp: number };

type KindKeys = {
  readonly byOwner: Map<string, OwnerKeys>;
  sorted?: readonly string[] | undefined;
  stamp: number;
};

function ownerOf(key: string): string {
  const slash = key.indexOf("/");
  return slash < 0 ? key : key.slice(0, slash);
}
