//! What the tests need from Debian.

use crate::tools::Need;

/// Browsers and their drivers, an electrical simulator and Python for the references, and
/// a reader of PDF for what is printed. Node has its own list, where npm is used.
pub(super) const NEEDS: [Need; 7] = [
    Need::program("chromium", &["chromium", "--version"]),
    Need::program("chromium-driver", &["chromedriver", "--version"]),
    Need::program("webkit2gtk-driver", &["WebKitWebDriver", "--help"]),
    Need::program("xvfb", &["Xvfb", "-help"]),
    Need::program("ngspice", &["ngspice", "--version"]),
    Need::program("python3-venv", &["python3", "-c", "import ensurepip"]),
    Need::program("poppler-utils", &["pdftotext", "-v"]),
];
