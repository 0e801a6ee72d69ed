-- Who agreed beside a client too young to agree alone that health answers are held: name and relation, sealed with the client's key.
alter table health_consent add column guardian text;
