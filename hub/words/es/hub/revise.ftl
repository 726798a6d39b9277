### What a target's revision is refused for.

why_target_changes_whose_word = por qué cambia la rasante y quién lo ordena
was_changed_since = { $id } cambió desde entonces: ahora vale r{ $revision }.
of = { $target }: { $wrong }
