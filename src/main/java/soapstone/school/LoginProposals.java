package soapstone.school;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Logins for a class: short, none twice, the same each time for the same list. They hold nothing about a student but what
 * the instructor typed, and so much of the class's code as tells two classes apart; the rest of the code stays unknown.
 */
final class LoginProposals {

    private static final int LONGEST_NAME = 16;
    private static final int LONGEST_CODE = 3;
    private static final int TRIES = 1_000;

    private final String code;
    private final RosterRules rules;
    private final Set<String> given = new HashSet<>();

    LoginProposals(RosterRules rules) {
        this.rules = rules;
        this.code = shortened(rules.classCode(), LONGEST_CODE);
    }

    /** Keeps a login from being proposed; false if it was given before. */
    boolean give(String login) {
        return given.add(login);
    }

    boolean isTaken(String login) {
        return rules.taken().test(login);
    }

    /** For a name, {@code ada-q-k7w}; for a bare seat, {@code k7w-7}. Empty if every login of this shape is taken. */
    Optional<String> propose(String name, String seat, int line) {
        String byName = shortened(name, LONGEST_NAME);
        String bySeat = joined(code, seat.isEmpty() ? Integer.toString(line) : shortened(seat, LONGEST_NAME));
        Optional<String> login = free(byName.isEmpty() ? bySeat : joined(byName, code));
        login.ifPresent(given::add);
        return login;
    }

    private Optional<String> free(String base) {
        for (int number = 1; number <= TRIES; number++) {
            String login = number == 1 ? base : joined(base, Integer.toString(number));
            if (!login.isEmpty() && !given.contains(login) && !isTaken(login)) {
                return Optional.of(login);
            }
        }
        return Optional.empty();
    }

    private static String joined(String left, String right) {
        return left.isEmpty() || right.isEmpty() ? left + right : left + "-" + right;
    }

    /** In letters and digits that every keyboard has, with a dash for what is between. */
    private static String shortened(String text, int most) {
        String lower = text.toLowerCase(Locale.ROOT);
        String spelled = lower.replace("ß", "ss").replace("æ", "ae").replace("œ", "oe").replace("ø", "o").replace("ł", "l");
        String plain = Normalizer.normalize(spelled, Normalizer.Form.NFKD).replaceAll("\\p{M}+", "").replaceAll("[^a-z0-9]+", "-");
        String bare = plain.replaceAll("^-|-$", "");
        return bare.substring(0, Math.min(bare.length(), most)).replaceAll("-$", "");
    }
}
