//! From a vote to a likelihood and back.

use alloc::vec;
use alloc::vec::Vec;

/// The likelihood, of 2¹², that a vote of `x` stands for: the logistic function, a vote of 256
/// being one.
pub(super) fn squash(x: i32) -> i32 {
    // At every 128th place from −2048 on.
    const AT: [i32; 33] = [
        1, 2, 4, 6, 10, 17, 27, 45, 74, 120, 194, 311, 488, 747, 1102, 1546, 2048, 2550, 2994,
        3349, 3608, 3785, 3902, 3976, 4022, 4051, 4069, 4079, 4086, 4090, 4092, 4094, 4095,
    ];
    if x >= 2047 {
        return 4095;
    }
    if x <= -2047 {
        return 1;
    }
    let (place, part) = (((x >> 7) + 16) as usize, x & 127);
    let at = |i: usize| AT.get(i).copied().unwrap_or(0);
    (at(place) * (128 - part) + at(place + 1) * part + 64) >> 7
}

/// The inverse of [`squash`] for every likelihood.
pub(super) fn stretched() -> Vec<i16> {
    let mut table = vec![0_i16; 4096];
    let mut filled = 0;
    for x in -2047..=2047_i32 {
        let until = squash(x) as usize;
        for entry in table.iter_mut().take(until + 1).skip(filled) {
            *entry = x as i16;
        }
        filled = filled.max(until + 1);
    }
    for entry in table.iter_mut().skip(filled) {
        *entry = 2047;
    }
    table
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn squash_is_the_logistic_function_at_every_128th_place_and_straight_between() {
        for place in -15..=15 {
            let exact = 4096.0 / (1.0 + (-f64::from(place) / 2.0).exp());
            assert!(
                (f64::from(squash(128 * place)) - exact).abs() <= 0.5,
                "{place}"
            );
            let middle = (squash(128 * place) + squash(128 * place + 128)) / 2;
            assert!((squash(128 * place + 64) - middle).abs() <= 1, "{place}");
        }
        assert_eq!((squash(-9000), squash(9000)), (1, 4095));
    }

    #[test]
    fn stretched_undoes_squash() {
        let table = stretched();
        assert!(table.is_sorted());
        for x in -2047..=2047 {
            let back = table[squash(x) as usize];
            assert_eq!(squash(i32::from(back)), squash(x), "{x}");
        }
    }
}
