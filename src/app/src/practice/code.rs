//! A shared form as a code: base 32 without letters that look alike
//! (Crockford's alphabet), with a check symbol that finds every single wrong
//! symbol and every swap of neighbours (mod 37).

use study::form::SharedForm;

const SYMBOLS: &[u8; 37] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ*~$=U";

/// How many symbols carry the form; one more checks them.
const LENGTH: usize = 13;

/// The only blueprint that this page has.
pub const BLUEPRINT: u8 = 1;

/// The code of a form, in groups that can be read aloud.
pub fn write(form: SharedForm) -> String {
    let bits = u64::from(form.bank) << 48
        | u64::from(form.blueprint) << 40
        | u64::from(form.size) << 32
        | u64::from(form.seed);
    let symbol = |value: u64| char::from(SYMBOLS[usize::try_from(value).unwrap_or(0)]);
    let mut text: String = (0..LENGTH)
        .rev()
        .map(|place| symbol(bits >> (5 * place) & 31))
        .collect();
    text.push(symbol(bits % 37));
    for at in [10, 5] {
        text.insert(at, '-');
    }
    text
}

/// Reads a code as people type it: in any case, with or without hyphens, o for
/// 0, i and l for 1.
///
/// # Errors
/// A sentence that says what is wrong with it.
pub fn read(typed: &str) -> Result<SharedForm, String> {
    let values: Vec<u64> = typed
        .chars()
        .filter(|letter| !letter.is_whitespace() && *letter != '-')
        .map(value)
        .collect::<Option<_>>()
        .ok_or("A code has only digits and letters. Look at it again: something else is in it.")?;
    if values.len() != LENGTH + 1 {
        return Err(format!(
            "A code has {} symbols, and this has {}. Look at it again.",
            LENGTH + 1,
            values.len()
        ));
    }
    let (check, carried) = values.split_last().ok_or("There is no code.")?;
    let bits = carried
        .iter()
        .fold(0_u128, |bits, value| bits << 5 | u128::from(*value & 31));
    let bits = u64::try_from(bits).map_err(|_| MISTYPED)?;
    if carried.iter().any(|value| *value > 31) || bits % 37 != *check {
        return Err(MISTYPED.into());
    }
    let part = |shift: u32, mask: u64| bits >> shift & mask;
    let form = SharedForm {
        bank: u16::try_from(part(48, 0xffff)).unwrap_or(0),
        blueprint: u8::try_from(part(40, 0xff)).unwrap_or(0),
        size: u8::try_from(part(32, 0xff)).unwrap_or(0),
        seed: u32::try_from(part(0, 0xffff_ffff)).unwrap_or(0),
    };
    Ok(form)
}

const MISTYPED: &str = "This code has a mistake in it: one symbol is wrong, or two have changed places. Compare it with what you were given.";

fn value(letter: char) -> Option<u64> {
    let letter = match letter.to_ascii_uppercase() {
        'O' => '0',
        'I' | 'L' => '1',
        other => other,
    };
    let at = SYMBOLS
        .iter()
        .position(|symbol| char::from(*symbol) == letter)?;
    u64::try_from(at).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn form() -> impl Strategy<Value = SharedForm> {
        (any::<u16>(), any::<u8>(), any::<u8>(), any::<u32>()).prop_map(
            |(bank, blueprint, size, seed)| SharedForm {
                bank,
                blueprint,
                size,
                seed,
            },
        )
    }

    proptest! {
        #[test]
        fn a_code_comes_back_however_it_is_typed(form in form()) {
            let code = write(form);
            prop_assert_eq!(read(&code), Ok(form));
            let typed = code.to_lowercase().replace('-', " ").replace('0', "o").replace('1', "l");
            prop_assert_eq!(read(&typed), Ok(form));
        }

        #[test]
        fn one_wrong_symbol_or_a_swap_is_found(form in form(), at in 0_usize..14, to in 0_usize..32) {
            let code = write(form).replace('-', "");
            let mut wrong: Vec<u8> = code.bytes().collect();
            wrong[at] = SYMBOLS[to];
            let wrong = String::from_utf8(wrong).unwrap();
            prop_assert!(wrong == code || read(&wrong).is_err());
            let mut swapped: Vec<u8> = code.bytes().collect();
            swapped.swap(at.min(12), at.min(12) + 1);
            let swapped = String::from_utf8(swapped).unwrap();
            prop_assert!(swapped == code || read(&swapped).is_err());
        }
    }

    #[test]
    fn what_is_no_code_is_told() {
        for (text, says) in [
            ("", "this has 0"),
            ("ABC", "this has 3"),
            ("0123 4567 89AB !C", "only digits and letters"),
        ] {
            assert!(read(text).unwrap_err().contains(says), "{text}");
        }
    }
}
