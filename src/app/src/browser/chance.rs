//! Random bits, for names that must never meet twice.

/// 64 fresh random bits.
pub fn bits() -> u64 {
    let mut bytes = [0_u8; 8];
    let drawn = web_sys::window()
        .and_then(|window| window.crypto().ok())
        .is_some_and(|crypto| crypto.get_random_values_with_u8_array(&mut bytes).is_ok());
    if !drawn {
        // A browser without the better source: the plain one, byte by byte.
        bytes = bytes.map(|_| js_sys::Math::random().to_bits().to_le_bytes()[4]);
    }
    u64::from_le_bytes(bytes)
}
