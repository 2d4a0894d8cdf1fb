-- The rows in which knock was counted under load, in the candidate or beside it; none for a candidate that was kept before they were.
alter table candidate add column knock blob;
