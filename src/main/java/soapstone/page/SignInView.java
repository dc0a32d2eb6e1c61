package soapstone.page;

import java.util.List;
import soapstone.source.Message;

/**
 * The page to sign in on.
 *
 * @param then     where to go afterwards
 * @param login    as it was typed
 * @param troubles what was wrong with the last try
 * @param code     a code of the second factor is asked for
 */
public record SignInView(String then, String login, List<Message> troubles, boolean code) {

    public SignInView {
        troubles = List.copyOf(troubles);
    }
}
