//! The lists of figures, one file each.

use super::{files::Files, read::Reading};

impl<'f> Reading<'f> {
    /// Reads them all.
    pub(super) fn numbers(&mut self, files: &'f Files) {
        macro_rules! figures {
            ($($file:literal $name:literal $field:ident;)*) => {$(
                self.list(files, concat!("numbers/", $file, ".toml"), $name, |c| {
                    &mut c.numbers.$field
                });
            )*};
        }
        figures! {
            "solutions" "solution" solutions;
            "dose-rules" "dose-rules" dose_rules;
            "vasoconstrictor-limits" "vasoconstrictor-limit" vasoconstrictor_limits;
            "teeth" "tooth" teeth;
            "formulas" "formula" formulas;
            "burs" "bur" burs;
            "bur-codes" "bur-code" bur_codes;
            "file-sizes" "file-size" file_sizes;
            "needles" "needle" needles;
            "cycles" "cycle" cycles;
            "limits" "limit" limits;
            "proportions" "proportion" proportions;
            "figures" "figure" figures;
        }
    }
}
