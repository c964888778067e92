The manual page and the completions are made from the command table. bash completes commands, options, their choices and
the names of sets.

=== run landdrill man | head -12
=== output
.TH LANDDRILL 1 "" "landdrill <version>" "User Commands"
.SH NAME
landdrill \- works a routine's score out on dry land
.SH SYNOPSIS
.br
landdrill score FILE... [OPTION...]
.br
landdrill check FILE... [OPTION...]
.br
landdrill tidy FILE... [OPTION...]
.br
landdrill explain FILE [LINE...] [OPTION...]
=== exit 0
=== run landdrill man | grep -c '^.SS '
=== output
45
=== exit 0
=== run landdrill man > landdrill.1; man --warnings -l landdrill.1 2>&1 > /dev/null
=== exit 0
=== run landdrill completions bash > c && bash -n c && echo fine
=== output
fine
=== exit 0
=== run landdrill completions bash > c; . ./c; try() { COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); COMPREPLY=(); _landdrill; echo "${COMPREPLY[*]}"; }; try landdrill s; try landdrill values ed; try landdrill score --fo; try landdrill score --format j; try landdrill values show kingf; try landdrill values show kingfisher-2026 pa; try landdrill score x.sheet --pa
=== output
score
edit
--format
json
kingfisher-2026
parts panels
--panel
=== exit 0
=== run landdrill completions zsh | head -1; landdrill completions fish | head -2
=== output
#compdef landdrill
# fish completion for landdrill
complete -c landdrill -f -n __fish_use_subcommand -a score -d 'what a routine is worth, line by line, beside a panel'
=== exit 0
