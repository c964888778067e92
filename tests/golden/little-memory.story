When memory runs out there is a sentence and an exit code, not a crash.

=== run (ulimit -v 40000; head -c 60000000 /dev/zero | tr '\0' 'x' | landdrill check -)
=== errors
landdrill: there is not enough memory for this
=== exit 3
