### Why a request came to nothing.

there_no_site_or_no = There is no site or no open day: nothing to print yet.
the_hub_is_stopping = The hub is stopping. Send it again when it is up.
that_is_too_large = That is too large. Send less at once.
this_phone_is_not_in = This phone is not in. Scan the code on the tailgate.
this_request_comes_from_another = This request comes from another site's page. Open the hub by the code on the tailgate.
that_code_is_void = That code is void. Scan today's code on the tailgate.
too_many_tries = Too many tries. Wait a minute, then try again.
came_too_slowly_dropped = It came too slowly and was dropped. It will be sent again; go nearer to the truck.
there_nothing_this_address = There is nothing at this address. Open the hub by the code on the tailgate.
# $seq (text) the number of the entry
the_log_has_no_entry = The log has no entry { $seq }.
log_cant_read_just_now = The log can't be read just now. The hub's terminal says why.
# $day (text) the day's name
# $known (text) what there is, with commas between
the_log_has_no_day = The log has no day { $day }. It has: { $known }.
file_this_photo_missing_or = The file of this photo is missing or was touched since it came. The log still names its hash; `rodcall verify` says more.
photo_cant_kept_or_read = The photo can't be kept or read just now. The hub's terminal says why. A photo on a phone stays there.
there_no_site_day = There is no site on that day: nothing to look back at.
there_is_no_site_yet = There is no site yet. Start the hub with a site file.
# $why (text) the reason, as it was said or found
malformed = { $why }
no_room_for_photo = The laptop's disk is all but full: the rest is left to the log. The photo stays on the phone, and is sent again once there is room.
stop_not_kept = STOP stands on every screen that has a link, but it is not in the log: the hub can't write any more. Use hand signals too; write down who stopped and when; the hub must be started again.
busy = The hub is busy. It will be sent again.
closing = The hub is closing. It will be sent again when it is back.
not_kept = Not kept: the hub can't write its log any more. Use hand signals; the hub must be started again.
