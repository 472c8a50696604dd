//! Mounts the page; nothing else.

fn main() {
    stringloft::app::start();
}
