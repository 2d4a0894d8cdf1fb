-- A notebook with tables of version 4: that of version 3 (schema-3.sql) after the step 004-maps.sql.
alter table advice add column map text;
alter table advice add column leave_map text;
update act set line = replace(line, 'version 3', 'version 4'), words = 'tables of version 4';
pragma user_version = 4;
