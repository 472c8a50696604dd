//! Putting lists in order, by the one sort of the crate. The standard library's takes 5 KB in the page for each kind
//! of list; here only the last moves are made for each kind.

/// Sorts a list in place by `later`, which says whether an entry belongs after another. Entries of which neither is
/// later keep their order.
pub fn sort<T>(list: &mut [T], later: impl Fn(&T, &T) -> bool) {
    let mut order = order(list.len(), &|one, other| later(&list[one], &list[other]));
    // Each cycle of the moves is gone round once.
    for start in 0..order.len() {
        let mut at = start;
        while order[at] != start {
            let next = order[at];
            list.swap(at, next);
            order[at] = at;
            at = next;
        }
        order[at] = at;
    }
}

/// The places of the entries in their order, by a heap: as quick in the worst case as at best. None where all stand in
/// order already.
fn order(count: usize, later: &dyn Fn(usize, usize) -> bool) -> Vec<usize> {
    if (1..count).all(|at| !later(at - 1, at)) {
        return Vec::new();
    }
    let after = |one, other| later(one, other) || (one > other && !later(other, one));
    let sink = |list: &mut [usize], mut at: usize| {
        loop {
            let mut child = 2 * at + 1;
            if child >= list.len() {
                return;
            }
            if child + 1 < list.len() && after(list[child + 1], list[child]) {
                child += 1;
            }
            if !after(list[child], list[at]) {
                return;
            }
            list.swap(at, child);
            at = child;
        }
    };
    let mut list: Vec<usize> = (0..count).collect();
    for at in (0..count / 2).rev() {
        sink(&mut list, at);
    }
    for end in (1..count).rev() {
        list.swap(0, end);
        sink(&mut list[..end], 0);
    }
    list
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

    /// Against the stable sort of the standard library.
    #[test]
    fn lists_drawn_at_random_come_out_as_the_standard_sort_has_them() {
        let mut seed = 5_u64;
        let mut draw = |most: u64| {
            seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            (seed >> 33) % most
        };
        for length in 0..200 {
            let different = 1 + draw(2 * length + 1);
            let mut list: Vec<(u64, u64)> = (0..length).map(|at| (draw(different), at)).collect();
            let mut expected = list.clone();
            expected.sort_by_key(|entry| entry.0);
            sort(&mut list, |one, other| one.0 > other.0);
            assert_eq!(list, expected, "of {length}");
        }
    }
}
