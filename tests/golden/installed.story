Which value sets does an installed program read? Its own, whatever happens to the folder that it was built from; of that
folder nothing stands in it.

=== run cmake --install "$BUILD" --prefix "$PWD/usr" >/dev/null && find usr -name landdrill\* -o -name _landdrill | sort
=== run cp "$REPOSITORY/examples/harbour-lights.sheet" duet.sheet; usr/bin/landdrill score duet.sheet --brief; sed -i 's/^spin-720,\([a-z]*\),\([^,]*\),[0-9.]*/spin-720,\1,\2,2.75/' usr/share/landdrill/values/kingfisher-2026/parts.csv; usr/bin/landdrill score duet.sheet --brief
=== run grep -c -a -F "$REPOSITORY" usr/bin/landdrill
=== run usr/bin/landdrill values list | grep kept
