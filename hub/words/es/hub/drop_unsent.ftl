### What throwing away something unsent is refused for.

say_what_kind_word_thrown = Diga qué clase de palabra se tiró, como take_reading.
