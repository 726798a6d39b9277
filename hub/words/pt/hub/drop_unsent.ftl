### What throwing away something unsent is refused for. Portuguese, read by no native speaker.

say_what_kind_word_thrown = Diga que tipo de palavra foi jogada fora, como take_reading.
