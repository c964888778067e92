A mistyped option must not quietly price the element as written.

=== copy examples/harbour-lights.sheet
=== run landdrill score harbour-lights.sheet --option 2=safr
=== errors
landdrill score: found --option 2=safr; expected an option of element 2
  hint: the nearest is safer
=== exit 2
=== run landdrill score harbour-lights.sheet --option 1=safer
=== errors
landdrill score: found --option 1=safer; expected an option of element 1, which has none
=== exit 2
=== run landdrill score harbour-lights.sheet --option 9=safer
=== errors
landdrill score: found --option 9=safer; the routine has no element 9
=== exit 2
=== run landdrill score harbour-lights.sheet --option safer
=== errors
landdrill score: found --option safer; expected NUMBER=TITLE, such as 2=safer
=== exit 2
