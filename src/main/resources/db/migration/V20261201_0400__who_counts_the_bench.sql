-- Which server wrote the counter down: of two on one database each must see that the other counts too.
alter table bench_clock add column writer uuid;
