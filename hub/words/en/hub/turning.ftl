### What a line of levels is refused for.

# $point (text) the point's name
# $to (text) to where or to whom
line_ends_not = The line ends on { $point }, not on { $to }. Shoot { $to } last: a line that closes on nothing proves nothing.
# $id (text) its name
there_benchmark_already_or_has = There is a benchmark “{ $id }” already, or it has no name. Give it a name of its own.
what_benchmark_looks_like_where = what the benchmark looks like and where it is
