export function compileSources(root: string): Promise<Map<string, string>>;
