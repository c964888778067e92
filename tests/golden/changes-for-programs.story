What a command changed is told to programs too, and several sets or sheets stand one a line.

=== file rough.sheet
routine   "Reeds"
event open
=== file wrong.sheet
routin "Reeds"
=== run landdrill tidy rough.sheet --format json
=== run landdrill tidy rough.sheet wrong.sheet --check --format json
=== run landdrill values copy kingfisher-2026 mine --format json
=== run landdrill values edit mine parts spin-720 value 1,5 --format json
=== run landdrill values edit mine parts spin-720 value 1.5 --format json
=== run landdrill values check mine kingfisher-2026 --format json
=== run landdrill values import mine kingfisher-2026 --season s --format json; landdrill values import mine --season s --format json
=== run landdrill values edit mine parts spin-720 value 1.6 --season s --format json; landdrill values undo mine --season s --format json; landdrill values redo mine --season s --format json
=== run landdrill values export mine out --season s --format json
=== run landdrill values remove mine --season s --format json
=== run landdrill book backup s copy --format json; landdrill book restore s copy --format json; landdrill book restore new copy --format json; landdrill book check new --format json
