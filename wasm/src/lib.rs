//! The page side of Backcut: glue from the core to a canvas.
