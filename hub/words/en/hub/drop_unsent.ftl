### What throwing away something unsent is refused for.

say_what_kind_word_thrown = Say what kind of word was thrown away, such as take_reading.
