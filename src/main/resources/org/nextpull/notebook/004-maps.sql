-- Advice of an ignition that holds a map: its cells as speed and degrees, "3500 22.0, 4000 23.5"; none before they were kept.
alter table advice add column map text;
alter table advice add column leave_map text;
