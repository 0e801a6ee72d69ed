-- The language of a person's screens.
alter table staff add column language varchar(8) default 'en' not null;
