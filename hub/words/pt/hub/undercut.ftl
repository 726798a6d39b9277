### What an undercut is refused for. Portuguese, read by no native speaker.

belongs_to_no_target = { $mark } não pertence a nenhum greide: não há o que sobrescavar.
