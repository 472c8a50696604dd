# The numbers, explained: what a string does to the soundboard.

angle = All strings meet the soundboard at one angle: { $angle } degrees unless you set another. It is measured between the string and the line along which the strings leave the soundboard.
flat = The soundboard is flat. As it rises under the strings, the angle grows a little.
whole = The string leaves the soundboard at its full tension; what a string rib or a grommet takes is left out.
share = As exact as the tension and the angle.
lift-lead = The part of the tension that is square to the soundboard and lifts it. The soundboard must carry the sum, and the lift for each length of it.
lift-degrees-degree-more-or = At 34 degrees, one degree more or less is about 2.6 % of the lift.
along-board-lead = The part of the tension that runs along the soundboard, towards its treble end. The string rib and the glue under it must carry it.
along-board-degrees-degree-more-or = At 34 degrees, one degree more or less is about 1.2 % of it.
