/**
 * What the school keeps, in a database: H2 in a data folder or PostgreSQL, with the same statements. The only package with
 * SQL. The steps of the tables are {@code V1__….sql} and so on among the resources; a step that was published is never
 * changed, another one follows it.
 */
package soapstone.record;
