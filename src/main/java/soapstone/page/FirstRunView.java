package soapstone.page;

import java.util.List;
import soapstone.source.Message;

/**
 * The page on which the first instructor makes an account.
 *
 * @param code     of the console, as it was typed
 * @param school   name of the school
 * @param shown    name that others see
 * @param login    as it was typed
 * @param troubles what was wrong with the last try
 */
public record FirstRunView(String code, String school, String shown, String login, List<Message> troubles) {

    public FirstRunView {
        troubles = List.copyOf(troubles);
    }
}
