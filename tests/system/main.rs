//! The whole system from outside: the real binary, its HTTP interface and its sockets; one module for each capability.

#[path = "../harness/mod.rs"]
mod harness;

mod demo_day;
