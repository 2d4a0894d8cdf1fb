-- Sessions with all that a re-evaluation needs, and beside it what was made of it, for lists, searches and other programs.
-- SI units; speed in rpm, advance in degrees. Times are ISO 8601 in UTC.

-- acts_kept: how many acts the figures below rest on; plan_text and the acts together are the plan as it stands.
create table session (
    id integer primary key autoincrement,
    started text not null,
    closed text,
    version text not null,
    plan_name text not null,
    plan_text text not null,
    engine text,
    induction text not null,
    displacement_m3 real,
    cylinders integer,
    fuel text,
    capture text,
    acts_kept integer not null default 0,
    coolant_k real,
    oil_k real,
    inlet_air_k real,
    exhaust_k real,
    scatter_percent real,
    scatter_df real,
    drift_percent_per_pull real,
    drift_error real
) strict;

-- What earlier sessions had taught when this one was advised.
create table experience (
    session integer primary key references session (id) on delete cascade,
    days integer not null,
    ln_timing_curvature real,
    ln_timing_curvature_sd real,
    ln_mixture_curvature real,
    ln_mixture_curvature_sd real,
    scatter_percent real,
    scatter_df real
) strict;

-- Logs, wires and tables of results in the order of the day.
create table source (
    session integer not null references session (id) on delete cascade,
    position integer not null,
    kind text not null check (kind in ('log', 'table')),
    name text not null,
    described_name text,
    encoding text,
    separator text,
    decimal_mark text,
    rows_good integer not null,
    rows_bad integer not null,
    thrown_away integer not null,
    primary key (session, position)
) strict, without rowid;

create table source_column (
    session integer not null,
    source integer not null,
    position integer not null,
    header text not null,
    role text,
    sensor integer,
    unit text,
    primary key (session, source, position),
    foreign key (session, source) references source (session, position) on delete cascade
) strict, without rowid;

create table alarm (
    session integer not null,
    source integer not null,
    position integer not null,
    limit_name text not null,
    role text not null,
    sensor integer not null,
    since_line integer not null,
    since_s real,
    until_line integer not null,
    until_s real,
    row_count integer not null,
    worst real not null,
    allowed real not null,
    primary key (session, source, position),
    foreign key (session, source) references source (session, position) on delete cascade
) strict, without rowid;

create table result_row (
    session integer not null,
    source integer not null,
    position integer not null,
    line integer not null,
    day_order integer,
    advance_deg real,
    lambda real,
    torque_nm real,
    power_w real,
    label text,
    fuel text,
    knock text not null,
    used integer not null check (used in (0, 1)),
    primary key (session, source, position),
    foreign key (session, source) references source (session, position) on delete cascade
) strict, without rowid;

-- Every stretch at full load, refused ones included, with its samples: see SampleBlob for the coding.
create table candidate (
    session integer not null,
    source integer not null,
    number integer not null,
    first_line integer not null,
    last_line integer not null,
    duration_s real not null,
    kind text not null,
    from_rpm real not null,
    to_rpm real not null,
    speed_role text not null,
    speed_sensor integer not null,
    speed_axis text not null,
    rpm_per_unit real not null,
    lambda_aligned text not null check (lambda_aligned in ('given', 'estimated', 'no')),
    lambda_delay_s real,
    lambda_delay_error_s real,
    refusal text,
    plateaus text not null,
    fingerprint text not null,
    samples blob not null,
    primary key (session, source, number),
    foreign key (session, source) references source (session, position) on delete cascade deferrable initially deferred
) strict;

create index candidate_fingerprint on candidate (fingerprint);

-- What the operator did by hand, in the order of time; line is the act as ActLine writes it.
create table act (
    session integer not null references session (id) on delete cascade,
    position integer not null,
    at text not null,
    pulls integer not null,
    line text not null,
    words text,
    primary key (session, position)
) strict, without rowid;

-- What was asked for before the day: rows of the settings file.
create table setting (
    session integer not null references session (id) on delete cascade,
    position integer not null,
    file text,
    pull integer,
    day_order integer,
    advance_deg real,
    offset_deg real,
    lambda real,
    fuel text,
    label text,
    knock text not null,
    note text,
    primary key (session, position)
) strict, without rowid;

-- What became of each pull.
create table pull (
    session integer not null references session (id) on delete cascade,
    number integer not null,
    kept_at text not null,
    source text not null,
    first_line integer not null,
    candidate integer not null,
    day_order real not null,
    standing text not null,
    advance_deg real,
    offset_deg real,
    lambda real,
    asked_lambda real,
    leanest_lambda real,
    fuel text,
    label text,
    note text,
    standard text,
    correction real,
    mean_torque_nm real,
    mean_power_w real,
    within_pull_percent real,
    peak_torque_nm real,
    peak_torque_rpm real,
    peak_power_w real,
    peak_power_rpm real,
    knock text not null,
    knock_events real,
    knock_level real,
    coolant_k real,
    oil_k real,
    inlet_air_k real,
    exhaust_k real,
    manifold_pa real,
    primary key (session, number)
) strict, without rowid;

-- Corrected figures over speed.
create table curve_point (
    session integer not null,
    pull integer not null,
    position integer not null,
    rpm real not null,
    torque_nm real not null,
    power_w real not null,
    primary key (session, pull, position),
    foreign key (session, pull) references pull (session, number) on delete cascade
) strict, without rowid;

create table limit_met (
    session integer not null,
    pull integer not null,
    limit_name text not null,
    worst real not null,
    allowed real not null,
    primary key (session, pull, limit_name),
    foreign key (session, pull) references pull (session, number) on delete cascade
) strict, without rowid;

-- What was advised, whenever it changed; settings as they were proposed.
create table advice (
    session integer not null references session (id) on delete cascade,
    position integer not null,
    at text not null,
    pulls integer not null,
    action text not null,
    code text not null,
    advance_deg real,
    offset_deg real,
    lambda real,
    leave_advance_deg real,
    leave_offset_deg real,
    leave_lambda real,
    leave_by text,
    timing_peak_deg real,
    timing_best_deg real,
    timing_low_deg real,
    timing_high_deg real,
    mixture_peak real,
    mixture_low real,
    mixture_high real,
    primary key (session, position)
) strict, without rowid;

-- owner: day, source, candidate, refusal, pull or verdict; source and number say which.
create table finding (
    id integer primary key,
    session integer not null references session (id) on delete cascade,
    owner text not null,
    source integer not null,
    number integer not null,
    code text not null,
    severity text not null,
    file text,
    line integer,
    column_number integer,
    plan_key text,
    pull integer
) strict;

create index finding_session on finding (session, owner);

create table finding_detail (
    finding integer not null references finding (id) on delete cascade,
    position integer not null,
    name text not null,
    words text,
    number real,
    primary key (finding, position)
) strict, without rowid;
