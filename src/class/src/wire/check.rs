//! The checksums of codes. They find accidents, not forgers.

use crc::{CRC_16_IBM_3740, CRC_32_ISO_HDLC, Crc, Table};

/// One table each of the smallest kind that is still quick: wider ones cost the page bytes.
static CRC_32: Crc<u32, Table<1>> = Crc::<u32, Table<1>>::new(&CRC_32_ISO_HDLC);
static CRC_16: Crc<u16, Table<0>> = Crc::<u16, Table<0>>::new(&CRC_16_IBM_3740);

/// CRC-32 (IEEE 802.3), as in ZIP, for codes that are scanned or sent.
pub fn crc32(bytes: &[u8]) -> u32 {
    CRC_32.checksum(bytes)
}

/// CRC-16/CCITT-FALSE (in newer lists IBM-3740), for codes that are typed.
pub fn crc16(bytes: &[u8]) -> u16 {
    CRC_16.checksum(bytes)
}
