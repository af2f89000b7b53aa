/** Path of a field inside what `where` names: `a.b`, or `a["odd key"]` where the key is not a plain word. */
export function childPath(where: string, key: string): string {
  if (!/^[A-Za-z_$][\w$]*$/.test(key)) return `${where}[${JSON.stringify(key.slice(0, 40))}]`;
  return where === "" ? key : `${where}.${key}`;
}
