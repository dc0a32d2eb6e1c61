package soapstone.page;

/** A page of one form about an account. */
public record AccountFormView(FormView form) {}
