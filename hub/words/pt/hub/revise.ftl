### What a target's revision is refused for. Portuguese, read by no native speaker.

why_target_changes_whose_word = por que o greide muda, e por palavra de quem
was_changed_since = { $id } mudou desde então: agora vale r{ $revision }.
of = { $target }: { $wrong }
