/** The start of a text's hash, as the command has it; a page that came by no safe way cannot reckon one. */
export async function hashed(text: string): Promise<{ readonly hash?: string }> {
  const { subtle } = crypto as { readonly subtle?: SubtleCrypto };
  if (!subtle) return {};
  const bytes = new Uint8Array(await subtle.digest('SHA-256', new TextEncoder().encode(text)));
  const hex = Array.from(bytes.subarray(0, 6), (byte) => byte.toString(16).padStart(2, '0'));
  return { hash: hex.join('') };
}
