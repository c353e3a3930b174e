//! A listener that stops when it is dropped.

use crate::dom::Result;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{Event, EventTarget};

/// A function that the browser calls, for as long as this value lives.
pub(crate) struct Listener {
    target: EventTarget,
    kind: &'static str,
    call: Closure<dyn FnMut(Event)>,
}

impl Listener {
    /// Calls `heard` on every event of `kind` at `target`.
    pub(crate) fn new(
        target: &EventTarget,
        kind: &'static str,
        heard: impl FnMut(Event) + 'static,
    ) -> Result<Self> {
        let call = Closure::<dyn FnMut(Event)>::new(heard);
        target.add_event_listener_with_callback(kind, call.as_ref().unchecked_ref())?;
        Ok(Self {
            target: target.clone(),
            kind,
            call,
        })
    }
}

impl Drop for Listener {
    fn drop(&mut self) {
        // A target that is gone has nothing left to stop.
        let _ = self
            .target
            .remove_event_listener_with_callback(self.kind, self.call.as_ref().unchecked_ref());
    }
}
