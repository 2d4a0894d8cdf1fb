-- A notebook with tables of version 3: that of version 2 (schema-2.sql) after the step 003-knock.sql.
alter table candidate add column knock blob;
update act set line = replace(line, 'version 2', 'version 3'), words = 'tables of version 3';
pragma user_version = 3;
