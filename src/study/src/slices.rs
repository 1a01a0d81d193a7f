//! Long work in slices. What takes a while comes in two forms: at once, for
//! tests and tools; and as a future that calls `pause` between slices, so that
//! a page can draw and answer touches meanwhile. Both do the same steps in the
//! same order and come to the same. When to rest, the page knows: nothing here
//! has a clock.

use core::{
    future::Future,
    pin::pin,
    task::{Context, Poll, Waker},
};

/// Does work whose pauses never wait, without pausing.
pub(crate) fn at_once<T>(work: impl Future<Output = T>) -> T {
    let mut work = pin!(work);
    let mut context = Context::from_waker(Waker::noop());
    loop {
        if let Poll::Ready(done) = work.as_mut().poll(&mut context) {
            return done;
        }
    }
}

/// No pause at all.
pub(crate) async fn never() {}
