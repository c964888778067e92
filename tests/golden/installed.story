Which value sets does an installed program read? Its own, whatever happens to the folder that it was built from; of that
folder nothing stands in it.

=== run cmake --install "$BUILD" --prefix "$PWD/usr" >/dev/null && find usr -name landdrill\* -o -name _landdrill | sort
=== output
usr/bin/landdrill
usr/share/bash-completion/completions/landdrill
usr/share/fish/vendor_completions.d/landdrill.fish
usr/share/landdrill
usr/share/man/man1/landdrill.1
usr/share/zsh/site-functions/_landdrill
=== exit 0
=== run cp "$REPOSITORY/examples/harbour-lights.sheet" duet.sheet; usr/bin/landdrill score duet.sheet --brief; sed -i 's/^spin-720,\([a-z]*\),\([^,]*\),[0-9.]*/spin-720,\1,\2,2.75/' usr/share/landdrill/values/kingfisher-2026/parts.csv; usr/bin/landdrill score duet.sheet --brief
=== output
file              routine         difficulty    estimate       panel      change
duet.sheet        Harbour Lights     22.35      237.2000    209.7167    -27.4833
file              routine         difficulty    estimate       panel      change
duet.sheet        Harbour Lights     23.70      246.6500    209.7167    -36.9333
=== exit 0
=== run grep -c -a -F "$REPOSITORY" usr/bin/landdrill
=== output
0
=== exit 1
=== run usr/bin/landdrill values list | grep -A1 'come with the program'
=== output
  5. the sets that come with the program
     <here>/usr/share/landdrill/values
=== exit 0
