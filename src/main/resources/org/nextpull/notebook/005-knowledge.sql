-- What a session teaches other days of its engine, and what it was taught itself, as lines of numbers: see the class KnowledgeText.
-- kind: in what the spark was counted, absolute, offset or standing. Lessons of a curvature alone are not used any more.
create table knowledge (
    session integer primary key references session (id) on delete cascade,
    kind text not null,
    days integer not null,
    content text not null
) strict;
alter table experience add column knowledge text;
drop table lesson;
-- Plans name no stages any more, and a plan with a key that is not known cannot be read.
update session set plan_text = replace(replace(plan_text, 'stages = "in-turn"', ''), 'stages = "together"', '');
