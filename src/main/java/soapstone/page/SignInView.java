package soapstone.page;

import java.util.List;
import soapstone.source.Message;

/**
 * The page to sign in on.
 *
 * @param then     where to go afterwards
 * @param login    as it was typed
 * @param tablet   several people use the machine
 * @param step     the secret that says that the password was right, when the code of the second factor is asked for; else empty
 * @param troubles what was wrong with the last try
 */
public record SignInView(String then, String login, boolean tablet, String step, List<Message> troubles) {

    public SignInView {
        troubles = List.copyOf(troubles);
    }
}
