//! One instant as numbers at a fixed place in memory, which the page reads without a copy.

use alloc::boxed::Box;
use backcut::timeline::Frame;

/// `t`, the ball's `x y z` and holder, then five times `present x y facing speed`.
pub(crate) const LENGTH: usize = BALL + PLAYERS * PLAYER;
const BALL: usize = 5;
const PLAYER: usize = 5;
const PLAYERS: usize = 5;

/// The buffer that the page looks into. Metres, seconds and radians in the core's convention; the
/// holder is 1–5, or 0 where nobody holds the ball; `present` is 1 or 0.
pub(crate) type Buffer = Box<[f32; LENGTH]>;

/// Writes `frame` into `out`.
#[allow(
    clippy::cast_possible_truncation,
    reason = "single precision is finer than a tenth of a millimetre on a court"
)]
pub(crate) fn write(frame: &Frame, out: &mut [f32; LENGTH]) {
    let ball = &frame.ball;
    let holder = ball.holder.map_or(0.0, |p| f32::from(p.number()));
    let (head, players) = out.split_at_mut(BALL);
    head.copy_from_slice(&[
        frame.t as f32,
        ball.x as f32,
        ball.y as f32,
        ball.z as f32,
        holder,
    ]);
    for (cells, player) in players.chunks_exact_mut(PLAYER).zip(&frame.players) {
        cells.copy_from_slice(&match player {
            Some(p) => [1.0, p.x as f32, p.y as f32, p.facing as f32, p.speed as f32],
            None => [0.0; PLAYER],
        });
    }
}
