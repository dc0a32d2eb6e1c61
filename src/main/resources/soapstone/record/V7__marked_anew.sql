-- What a remark says of the answer itself, where it was marked anew: by a mended exercise, or as the paper really says. Empty for all
-- other remarks, and for those of earlier programs.
alter table remark add column typed varchar(2000);
alter table remark add column read_as varchar(2000);
alter table remark add column slip varchar(200);
alter table remark add column families varchar(400);
alter table remark add column says text;
alter table remark add column odds double precision;
