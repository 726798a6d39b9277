//! One file for each thing that can be said: its command, its refusals, its entries and its tests together.

pub mod aim;
pub mod blind;
pub mod call;
pub mod check_due;
pub mod check_shot;
pub mod day;
pub mod edge;
pub mod join;
pub mod laser_test;
pub mod machine;
pub mod marks;
pub mod prove;
pub mod quick_call;
pub mod reading;
pub mod receipt;
pub mod repeat;
pub mod revise;
pub mod rule;
pub mod set_up;
pub mod settle;
pub mod site;
pub mod stop;
pub mod suspect;
pub mod touched;
pub mod turning;
