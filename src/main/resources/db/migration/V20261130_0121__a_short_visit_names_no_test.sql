-- That hair is cut at a short visit told, to whoever has a copy of the database, that metal was suspected; it is derived from the answers now.
alter table test_visit drop column tufts;
