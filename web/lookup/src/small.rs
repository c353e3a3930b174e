//! What stands in for the standard library where every byte is fetched over the air.

use core::panic::PanicInfo;
use lol_alloc::{FreeListAllocator, LockedAllocator};

#[global_allocator]
static ALLOCATOR: LockedAllocator<FreeListAllocator> =
    LockedAllocator::new(FreeListAllocator::new());

/// Stops. The page's script sees it as an error and leaves the text and the tables; a
/// message would bring the whole of `core::fmt` with it.
#[panic_handler]
fn panic(_: &PanicInfo<'_>) -> ! {
    core::arch::wasm32::unreachable()
}
