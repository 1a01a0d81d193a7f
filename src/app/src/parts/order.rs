//! Putting short lists in order.

/// Sorts a list that is short or nearly in order; equal entries keep their
/// places. The library's sort is quicker on long lists in disorder, and costs
/// some four kilobytes of program for each kind of entry.
pub fn in_order<T>(list: &mut [T], before: impl Fn(&T, &T) -> bool) {
    for end in 1..list.len() {
        let mut at = end;
        while at > 0 && before(&list[at], &list[at - 1]) {
            list.swap(at, at - 1);
            at -= 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::in_order;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn it_sorts_as_the_library_does(list in prop::collection::vec((0_u8..6, 0_u8..6), 0..24)) {
            let (mut ours, mut theirs) = (list.clone(), list);
            in_order(&mut ours, |a, b| a.0 < b.0);
            theirs.sort_by_key(|each| each.0);
            prop_assert_eq!(ours, theirs);
        }
    }
}
