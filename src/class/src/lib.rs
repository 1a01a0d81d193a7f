//! Between instructor and students: assignments, hand-ins, class reports, packs and exchange formats.
