-- The clock of a bench test also stands still while the server goes on and its machine sleeps; the record tells the two apart.
alter table bench_gap add column asleep boolean default false not null;
