//! The best set of strings: against every set there is, against an integer-programming solver, and against what must
//! hold whatever the stock.

#[path = "choose/drawn.rs"]
mod drawn;
#[path = "choose/every_set.rs"]
mod every_set;
#[path = "choose/laws.rs"]
mod laws;
#[path = "choose/model.rs"]
mod model;
#[path = "choose/refused.rs"]
mod refused;
#[path = "choose/solved.rs"]
mod solved;
