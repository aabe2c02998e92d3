//! Putting things into a list.

use alloc::vec::Vec;

/// An iterator's items as a list, one pushed after the other.
pub trait Listed: Iterator + Sized {
    /// As `collect`, which is there once for each sort of iterator and in wasm takes twice the code:
    /// it asks how many items are to come and makes room for them first.
    ///
    /// ```
    /// use backcut::math::Listed;
    /// assert_eq!((1..4).map(|n| n * n).listed(), [1, 4, 9]);
    /// ```
    fn listed(self) -> Vec<Self::Item> {
        let mut list = Vec::new();
        self.for_each(|item| list.push(item));
        list
    }
}

impl<I: Iterator> Listed for I {}
