### What a change of the site is refused for.

why_site_changes_whose_word = why the site changes, and on whose word
