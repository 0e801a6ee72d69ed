-- When a one-use code was shown at this door. Everything about a client leaves only soon after one: neither the salon's tablet nor a browser known from before is a code.
alter table door add column code_shown_at timestamp with time zone;
