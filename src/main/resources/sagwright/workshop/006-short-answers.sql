-- What of a run's answer is needed among thousands. A copy alone, as caliper_figures is: it is made
-- from rows that never change; where one is missing, the rows themselves are read.

-- figures: modulus, shear ratio, and what was assumed and warned of, packed
create table evaluation_figures (
  evaluation_id integer primary key references evaluation,
  figures       blob    not null
) strict;
