package soapstone.page;

import java.util.List;

/**
 * Somebody's own account.
 *
 * @param factorOffered whether a second factor can be had
 * @param factorOn      whether there is one
 * @param wantsKeeper   the school has no keeper, and this person can make one
 * @param languages     that the site speaks
 */
public record AccountView(String shown, String login, boolean factorOffered, boolean factorOn, boolean wantsKeeper, List<String> languages, String language) {

    public AccountView {
        languages = List.copyOf(languages);
    }
}
