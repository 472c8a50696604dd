//! Putting short lists in order. The standard library's sort is for long ones and takes 5 KB in the page for
//! each kind of list.

/// Sorts a list in place: an entry moves up past those that are `later` than it. Entries of which neither is
/// later keep their order. For some hundred entries at most, best where few are out of order.
pub fn sort<T>(list: &mut [T], later: impl Fn(&T, &T) -> bool) {
    for place in 1..list.len() {
        let mut at = place;
        while at > 0 && later(&list[at - 1], &list[at]) {
            list.swap(at - 1, at);
            at -= 1;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_is_in_order_and_equals_keep_theirs() {
        let mut list = [(3, 'a'), (1, 'b'), (2, 'c'), (1, 'd'), (3, 'e'), (0, 'f')];
        sort(&mut list, |one, other| one.0 > other.0);
        assert_eq!(list, [(0, 'f'), (1, 'b'), (1, 'd'), (2, 'c'), (3, 'a'), (3, 'e')]);
        let mut none: [i32; 0] = [];
        sort(&mut none, |one, other| one > other);
    }
}
