//! Watching the repository: events of interest, gathered into bursts.

use super::change::Change;
use anyhow::{Context, Result};
use notify::{Event, RecommendedWatcher, RecursiveMode, Watcher as _};
use std::path::{Path, PathBuf};
use std::time::Duration;
use tokio::sync::mpsc::{UnboundedReceiver, UnboundedSender};
use tokio::time::timeout;

/// Editors write a file in several steps; a burst ends when this long nothing happened.
const QUIET: Duration = Duration::from_millis(80);

/// The folders that are watched, and the root's own files.
const FOLDERS: [&str; 3] = ["core", "lessons", "web"];

/// Starts watching. It ends when the returned watcher is dropped.
pub(super) fn start(root: &Path, sender: UnboundedSender<Change>) -> Result<RecommendedWatcher> {
    let base = root.canonicalize().context("cannot find the repository")?;
    let watched = base.clone();
    let mut watcher = notify::recommended_watcher(move |event: notify::Result<Event>| {
        let Ok(event) = event else { return };
        if let Some(change) = meaning(&base, &event) {
            // The receiver goes only when the server ends.
            let _ = sender.send(change);
        }
    })
    .context("cannot watch files")?;
    let told = |path: &Path| format!("cannot watch {}", path.display());
    for folder in FOLDERS {
        let path = watched.join(folder);
        if path.is_dir() {
            let mode = RecursiveMode::Recursive;
            watcher.watch(&path, mode).with_context(|| told(&path))?;
        }
    }
    let mode = RecursiveMode::NonRecursive;
    watcher
        .watch(&watched, mode)
        .with_context(|| told(&watched))?;
    Ok(watcher)
}

/// The greatest change of an event. Reading a file is none.
fn meaning(base: &Path, event: &Event) -> Option<Change> {
    if event.kind.is_access() {
        return None;
    }
    let inside = |path: &PathBuf| Change::of(path.strip_prefix(base).ok()?);
    event.paths.iter().filter_map(inside).max()
}

/// Waits for a change and for the quiet after it; gives the greatest of the burst. None
/// when nobody watches any longer.
pub(super) async fn burst(changes: &mut UnboundedReceiver<Change>) -> Option<Change> {
    let mut greatest = changes.recv().await?;
    while let Ok(Some(next)) = timeout(QUIET, changes.recv()).await {
        greatest = greatest.max(next);
    }
    Some(greatest)
}

#[cfg(test)]
mod tests {
    use super::{burst, meaning};
    use crate::serve::change::Change;
    use notify::event::{AccessKind, CreateKind, Event, EventKind};
    use std::path::Path;
    use tokio::sync::mpsc;

    #[test]
    fn reading_a_file_changes_nothing() {
        let base = Path::new("/here");
        let path = base.join("lessons/05-the-image.md");
        let read = Event::new(EventKind::Access(AccessKind::Any)).add_path(path.clone());
        assert_eq!(meaning(base, &read), None);
        let made = Event::new(EventKind::Create(CreateKind::File)).add_path(path);
        assert_eq!(meaning(base, &made), Some(Change::Content));
    }

    #[tokio::test]
    async fn a_burst_gives_its_greatest_change_once() {
        let (sender, mut changes) = mpsc::unbounded_channel();
        for change in [Change::Content, Change::Tool, Change::Content] {
            sender.send(change).unwrap();
        }
        assert_eq!(burst(&mut changes).await, Some(Change::Tool));
        drop(sender);
        assert_eq!(burst(&mut changes).await, None);
    }
}
