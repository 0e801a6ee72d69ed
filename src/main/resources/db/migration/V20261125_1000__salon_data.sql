-- Product lines with what their makers' leaflets ask; a change is a new row, so that what a test once used stays readable.
create table product_line (
    id uuid primary key,
    line_id uuid not null,
    version_no integer not null,
    name varchar(200) not null,
    kind varchar(32) not null,
    wait_hours integer not null,
    validity varchar(16) not null,
    validity_count integer not null,
    mixing varchar(16) not null,
    site varchar(16) not null,
    leave_on_minutes integer not null,
    leaflet_date date,
    para_group varchar(16) not null,
    other_dyes text not null,
    shades text not null,
    retired boolean not null,
    made_at timestamp with time zone not null,
    made_by uuid not null,
    constraint product_line_version_once unique (line_id, version_no)
);

-- Services the salon made of known steps, and known services it does not offer.
create table menu_item (
    service_id varchar(64) primary key,
    own boolean not null,
    step_ids varchar(500) not null,
    retired boolean not null,
    made_at timestamp with time zone not null
);
create table menu_name (
    id uuid primary key,
    service_id varchar(64) not null references menu_item (service_id),
    language varchar(35) not null,
    name varchar(200) not null,
    constraint menu_name_once unique (service_id, language)
);

-- Figures of the policy that the salon sets more strictly than its law.
create table stricter_figure (
    name varchar(64) primary key,
    figure integer not null,
    set_at timestamp with time zone not null,
    set_by uuid not null
);

-- The product a visit is planned with: a line and its darkest shade.
create table planned_product (
    visit_id uuid primary key references visit (id),
    line_id uuid not null,
    shade varchar(200) not null,
    named_at timestamp with time zone not null,
    named_by uuid not null
);
