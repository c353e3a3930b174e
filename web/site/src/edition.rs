//! The two editions of the site: files on a host, or a folder that opens by itself.

/// Which edition is being rendered.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Edition {
    /// Static files on a host.
    Hosted {
        /// Where the site stands on its host: begins and ends with `/`. Used by
        /// `404.html` alone, which is served at any depth; all other links are relative.
        base: String,
        /// The address the site will be published at, when known: printed links use it.
        public_url: Option<String>,
    },
    /// A folder that opens by double-click, without a server.
    Portable,
}

impl Edition {
    /// The hosted edition at the root of its host, its public address unknown.
    pub fn at_root() -> Self {
        Self::Hosted {
            base: "/".to_owned(),
            public_url: None,
        }
    }

    /// Whether this is the edition that opens without a server.
    pub fn is_portable(&self) -> bool {
        matches!(self, Self::Portable)
    }

    /// The site's public address, ending in `/`, when it is known.
    pub fn public_url(&self) -> Option<&str> {
        match self {
            Self::Hosted { public_url, .. } => public_url.as_deref(),
            Self::Portable => None,
        }
    }
}
