-- What a session taught of its engine: natural log of the curvature of a sweep, from its own pulls alone.
create table lesson (
    session integer not null references session (id) on delete cascade,
    factor text not null check (factor in ('timing', 'mixture')),
    ln_curvature real not null,
    sd real not null,
    primary key (session, factor)
) strict, without rowid;

-- Whose days an experience rested on.
alter table experience add column kin text not null default 'engine';
