//! Bytes as letters that no mail or chat program breaks a link at, and whether they arrived whole.

use alloc::string::String;
use alloc::vec::Vec;

/// base64url without padding (RFC 4648, section 5).
const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

pub(super) fn encode(bytes: &[u8]) -> String {
    let mut out = String::new();
    for group in bytes.chunks(3) {
        let byte = |i: usize| group.get(i).map_or(0, |b| u32::from(*b));
        let bits = byte(0) << 16 | byte(1) << 8 | byte(2);
        for place in 0..=group.len() {
            let letter = LETTERS.get((bits >> (18 - 6 * place) & 63) as usize);
            out.extend(letter.map(|l| char::from(*l)));
        }
    }
    out
}

/// Why letters are no bytes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum NoText {
    /// The letter at this offset is none of the 64.
    Letter(usize),
    /// They end within a byte, or on bits that no encoder writes.
    End,
}

pub(super) fn decode(letters: &[u8]) -> Result<Vec<u8>, NoText> {
    let mut out = Vec::new();
    let (mut bits, mut waiting) = (0_u32, 0);
    for (at, letter) in letters.iter().enumerate() {
        let value = LETTERS.iter().position(|l| l == letter);
        let value = value.ok_or(NoText::Letter(at))?;
        bits = bits << 6 | value as u32;
        waiting += 6;
        if waiting >= 8 {
            waiting -= 8;
            out.push((bits >> waiting) as u8);
            bits &= (1 << waiting) - 1;
        }
    }
    if waiting == 6 || bits != 0 {
        return Err(NoText::End);
    }
    Ok(out)
}

/// CRC-32 as in PNG and gzip (ISO/IEC 3309; the code of PNG, annex D, bit by bit). It finds every
/// change within 32 bits in a row, so each wrong letter and each pair of neighbours exchanged.
pub(super) fn checksum<'a>(bytes: impl IntoIterator<Item = &'a u8>) -> u32 {
    let mut crc = u32::MAX;
    for byte in bytes {
        crc ^= u32::from(*byte);
        for _ in 0..8 {
            crc = crc >> 1 ^ if crc & 1 == 1 { 0xEDB8_8320 } else { 0 };
        }
    }
    !crc
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn letters_are_those_of_the_published_test_vectors() {
        // RFC 4648, section 10, less the padding.
        for (bytes, letters) in [
            ("", ""),
            ("f", "Zg"),
            ("fo", "Zm8"),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg"),
            ("fooba", "Zm9vYmE"),
            ("foobar", "Zm9vYmFy"),
        ] {
            assert_eq!(encode(bytes.as_bytes()), letters);
            assert_eq!(decode(letters.as_bytes()).unwrap(), bytes.as_bytes());
        }
        // Section 5: the two letters in which this alphabet differs from the usual one.
        assert_eq!(encode(&[0xfb, 0xff]), "-_8");
    }

    #[test]
    fn what_no_encoder_writes_is_refused() {
        assert_eq!(decode(b"Zm9v+"), Err(NoText::Letter(4)));
        assert_eq!(decode(b"Zg=="), Err(NoText::Letter(2)));
        assert_eq!(decode(b"Z"), Err(NoText::End));
        // RFC 4648, section 3.5: bits that fill up the last letter are zero.
        assert_eq!(decode(b"Zh"), Err(NoText::End));
    }

    #[test]
    fn checksum_is_that_of_published_files() {
        // Catalogue of parametrised CRC algorithms, CRC-32/ISO-HDLC: check.
        assert_eq!(checksum(b"123456789"), 0xCBF4_3926);
        // PNG specification, the chunk IEND, which is the same in every file.
        assert_eq!(checksum(b"IEND"), 0xAE42_6082);
    }

    proptest! {
        #[test]
        fn prop_bytes_come_back(bytes: Vec<u8>) {
            prop_assert_eq!(decode(encode(&bytes).as_bytes()).unwrap(), bytes);
        }

        #[test]
        fn prop_any_letters_are_one_thing_or_none(letters in "[A-Za-z0-9_-]{0,40}") {
            if let Ok(bytes) = decode(letters.as_bytes()) {
                prop_assert_eq!(encode(&bytes), letters);
            }
        }
    }
}
