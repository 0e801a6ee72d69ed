-- How a photo or letter is kept: AS_SENT (until the next start looks at it), REDRAWN from its pixels, or FILE, which is only handed out as a download.
alter table bench_photo add column kept varchar(16) default 'AS_SENT' not null;
alter table noted_paper add column kept varchar(16) default 'AS_SENT' not null;
