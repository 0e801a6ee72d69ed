-- Single days and weeks on which the salon is shut, beside the hours of its ordinary week.
alter table salon add column closed_days text default '' not null;
