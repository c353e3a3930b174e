//! Sizes of the page's window.

/// A window by its inner size in CSS pixels.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Window {
    /// Width.
    pub width: u32,
    /// Height.
    pub height: u32,
    /// Whether it behaves as a phone's: touch, and the viewport as the page sets it.
    pub phone: bool,
}

impl Window {
    /// A phone held upright.
    pub const PHONE: Self = Self::phone(360, 740);
    /// The same with its keypad open.
    pub const PHONE_WITH_KEYPAD: Self = Self::phone(360, 400);
    /// The narrowest phone the site is made for.
    pub const NARROW_PHONE: Self = Self::phone(320, 640);
    /// A laptop.
    pub const LAPTOP: Self = Self {
        width: 1280,
        height: 800,
        phone: false,
    };

    const fn phone(width: u32, height: u32) -> Self {
        Self {
            width,
            height,
            phone: true,
        }
    }
}
