-- SHA-256 of the sealed file as it is given out, by which a file somebody holds is found again; the seal in it can be guessed by nobody
alter table sealed_paper add column file_sha256 varchar(64);
create index sealed_paper_file on sealed_paper (file_sha256);
