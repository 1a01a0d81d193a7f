//! Filling in the gaps of a written file.

use anyhow::{Result, bail};

/// Replaces every gap of `text` by its value, in turn.
///
/// # Errors
/// When a value has no gap to go into: the file and the tool have drifted apart.
pub fn fill(file: &str, text: &str, values: &[(&str, &str)]) -> Result<String> {
    let mut filled = text.to_owned();
    for (gap, value) in values {
        if !filled.contains(gap) {
            bail!("{file}: the gap {gap} is not there. Put it back where the value belongs.");
        }
        filled = filled.replace(gap, value);
    }
    Ok(filled)
}

#[cfg(test)]
mod tests {
    use super::fill;

    #[test]
    fn every_gap_is_filled() {
        assert_eq!(fill("f", "a A b A", &[("A", "1")]).unwrap(), "a 1 b 1");
    }

    #[test]
    fn a_lost_gap_is_told() {
        let error = fill("loader.js", "a", &[("GAP", "1")])
            .unwrap_err()
            .to_string();
        assert!(error.contains("loader.js") && error.contains("GAP"));
    }
}
