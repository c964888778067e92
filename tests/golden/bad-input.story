Bytes that are no sheet: a picture, the wrong encoding, NUL, a word processor's file, 50 MB of brackets, a quote that is
never closed, a file that is never a sheet. Bounded answers, nothing scored, no crash.

=== run printf '\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR' > p; landdrill check p
=== output
p: 4 errors
=== errors
p:1:1: error: found the byte \x89; expected text in UTF-8 [not-utf8]
  ...PNG
     ^
  hint: save the file again as plain text in UTF-8; it looks like a text from Windows, with typographic signs
p:2:1: error: found "\x1A"; expected a keyword such as routine, element, parts, run or panel [unknown-keyword]
  \x1A
  ^~~~
  hint: every line starts with its keyword; a note starts with #
p:3:1: error: found a NUL byte; expected text [nul-byte]
  \x00\x00\x00
  ^~~~
  hint: save the file again as plain text in UTF-8
p:4:1: error: found "IHDR"; expected a keyword such as routine, element, parts, run or panel [unknown-keyword]
  IHDR
  ^~~~
  hint: every line starts with its keyword; a note starts with #
=== exit 1
=== run printf 'routine "Gr\xfc\xdfe"\n' > l; landdrill check l
=== output
l: 1 error
=== errors
l:1:12: error: found the byte \xFC; expected text in UTF-8 [not-utf8]
  routine "Gr\xFC\xDFe"
             ^~~~
  hint: save the file again as plain text in UTF-8; if it is Latin-1 (Windows), this character is ü
=== exit 1
=== run printf 'rout\x00ine "A"\n' | landdrill check -
=== output
standard input: 1 error
=== errors
standard input:1:5: error: found a NUL byte; expected text [nul-byte]
  rout\x00ine "A"
      ^~~~
  hint: save the file again as plain text in UTF-8
=== exit 1
=== run python3 -c 'import sys; sys.stdout.write("(" * 50_000_000)' | landdrill check - | head -c 300; echo
=== output
standard input: 1 error

=== errors
standard input:1:1: error: found a line of more than 65,536 bytes; expected a sheet as a person would type it [too-long]
  (((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((...
  ^
  hint: is this the right file?
=== exit 0
=== run python3 -c 'import sys; sys.stdout.write("routine \"A\"\n" + "[\n" * 25_000_000)' | landdrill check - 2>&1 | tail -2
=== output
and 1999900 more messages
standard input: A: 2000000 errors
=== exit 0
=== run python3 -c 'import sys; sys.stdout.write("routine \"A\n" + "x\n" * 1_000_000)' | landdrill check - 2>&1 | tail -2
=== output
and 999901 more messages
standard input: 1000001 errors
=== exit 0
=== run head -c 90000000 /dev/zero | landdrill check -
=== errors
landdrill: standard input: a sheet longer than 64 MB
  hint: a sheet starts with a `routine` line
=== exit 3
=== run yes element | head -c 90000000 | landdrill score - 2>&1 | tail -1
=== output
  hint: a sheet starts with a `routine` line
=== exit 0
