/**
 * Four bytes that change when any byte does: CRC-32 with the polynomial of ISO/IEC 3309 (reflected 0xEDB88320). It is
 * there for copying slips, so that a lost or changed character never passes as another plan.
 */
export function checksum(bytes: readonly number[]): number[] {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  crc ^= 0xffffffff;
  return [crc >>> 24, (crc >>> 16) & 255, (crc >>> 8) & 255, crc & 255];
}
