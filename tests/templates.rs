//! Full-size templates: what is written lies where the drawing says, in every kind of file and on paper.

#[path = "templates/audited.rs"]
mod audited;
#[path = "templates/files.rs"]
mod files;
#[path = "templates/harps.rs"]
mod harps;
#[path = "templates/printed.rs"]
mod printed;
#[path = "templates/readers.rs"]
mod readers;
#[path = "templates/sample.rs"]
mod sample;
