-- What V20261129_2241 sealed or coded.
alter table page_shown alter column name set not null;
alter table visit drop column standing_code;
alter table visit drop column owed_by;
alter table visit drop column owed_what;
