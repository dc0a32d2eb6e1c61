package soapstone.page;

/**
 * One account as the keeper sees it.
 *
 * @param self the keeper's own
 */
public record AccountPersonView(AccountsView.Row row, FormView form, boolean self) {}
