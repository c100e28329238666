// A declaration's values as a tree: groups, lists, and texts as they were typed.

const isGroup = (value) => value !== null && typeof value === "object" && !Array.isArray(value);
const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);

/** The value that a path leads to; undefined when there is none. */
export const at = (values, path) => path.reduce((value, step) => value?.[step], values);

/** Puts a value where a path leads; groups and lists on the way are made. */
export function put(values, path, value) {
  let inside = values;
  path.slice(0, -1).forEach((step, i) => { inside = inside[step] ??= typeof path[i + 1] === "number" ? [] : {}; });
  inside[path.at(-1)] = value;
}

/** The tree without what says nothing: empty texts, and groups that hold nothing. An empty list says "none". */
function said(value) {
  if (Array.isArray(value)) return value.map(said).filter((v) => v !== undefined);
  if (isGroup(value)) {
    const fields = Object.entries(value).map(([key, v]) => [key, said(v)]).filter(([, v]) => v !== undefined);
    return fields.length ? Object.fromEntries(fields) : undefined;
  }
  return value === "" || value === null ? undefined : value;
}

/** By which of its texts an item of a list is known again. */
const keyOf = (item) => isGroup(item) ? item.oil ?? item.extra ?? item.wax ?? item.part ?? item.name : undefined;

/**
 * What leads from one tree to another, value by value, so that what was not changed stays in the file as it was written. Values come
 * first and removals last, those of a list from its end: no position moves before it is used.
 */
function changes(before, after, path = []) {
  if (same(before, after)) return [];
  if (after === undefined) return [{ path, value: null }];
  if (isGroup(before) && isGroup(after)) {
    const keys = Object.keys(after).filter((k) => after[k] !== undefined);
    return [
      ...keys.flatMap((k) => changes(before[k], after[k], [...path, k])),
      ...Object.keys(before).filter((k) => !keys.includes(k)).map((k) => ({ path: [...path, k], value: null })),
    ];
  }
  if (Array.isArray(before) && Array.isArray(after)) return changesOfList(before, after, path);
  return [{ path, value: after }];
}

function changesOfList(before, after, path) {
  const keyed = [...before, ...after].every((item) => keyOf(item) !== undefined);
  if (after.length === 0 || !keyed && before.length > after.length) return [{ path, value: after }];
  if (!keyed) return [...before.flatMap((item, i) => changes(item, after[i], [...path, i])), ...after.slice(before.length).map((value, i) => ({ path: [...path, before.length + i], value }))];
  const wanted = after.map(keyOf);
  const stay = before.map((item, i) => ({ item, i })).filter(({ item }) => wanted.includes(keyOf(item)));
  if (!same(stay.map(({ item }) => keyOf(item)), wanted.slice(0, stay.length)) || new Set(wanted).size < wanted.length) return [{ path, value: after }];
  return [
    ...stay.flatMap(({ item, i }, n) => changes(item, after[n], [...path, i])),
    ...after.slice(stay.length).map((value, n) => ({ path: [...path, before.length + n], value })),
    ...before.map((item, i) => ({ item, i })).filter(({ item }) => !wanted.includes(keyOf(item))).reverse().map(({ i }) => ({ path: [...path, i], value: null })),
  ];
}

/** What leads from the tree of a file to that of its fields; null where nothing does. */
export function edits(base, values) {
  const all = changes(said(base) ?? {}, said(values) ?? {});
  return all.length ? all : null;
}
