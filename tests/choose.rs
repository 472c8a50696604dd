//! The best set of strings: against every set there is, and against what must hold whatever the stock. Against an
//! integer-programming solver it stands in `published.rs`.

#[path = "choose/drawn.rs"]
mod drawn;
#[path = "choose/every_set.rs"]
mod every_set;
#[path = "choose/laws.rs"]
mod laws;
#[path = "choose/maker.rs"]
mod maker;
#[path = "choose/model.rs"]
mod model;
#[path = "choose/refused.rs"]
mod refused;
