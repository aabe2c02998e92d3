//! What the standard library would bring in many times the size.

use core::arch::wasm32::unreachable;
use core::panic::PanicInfo;
use rlsf::SmallGlobalTlsf;

#[global_allocator]
static ALLOCATOR: SmallGlobalTlsf = SmallGlobalTlsf::new();

/// The core has no panics of its own. One of the compiler's would stop the module, and the page
/// tells of that; its text would cost each reader kilobytes.
#[panic_handler]
fn panic(_: &PanicInfo<'_>) -> ! {
    unreachable()
}
