### What every printed sheet says.

head_chain_entry = Head of the chain at entry{ " " }
whoever_holds_this_sheet_can = Whoever holds this sheet can prove that the log was not changed up to this entry. It proves what was written, not that a person saw it or that a reading was true.
a_reminder_not_a_guard = A reminder, not a guard: nothing here was sensed. The engineer of record, local codes, the one-call locate and the competent person come before anything printed here.
none = None.
profile_of = Profile of
stations_in_feet = Stations in feet. Band: what is allowed. Whisker: how sure. Hollow, ?: shoot it again. Allowed{ " " }
