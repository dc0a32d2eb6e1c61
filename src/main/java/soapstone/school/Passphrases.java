package soapstone.school;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.regex.Pattern;

/**
 * Passphrases that the site makes for a slip of paper: four words of an own list, such as {@code copper willow tandem orbit}.
 *
 * <p>The list has 4096 words, so that four of them are worth 4 × 12 = 48 bits. None has under three letters, so that four
 * and the gaps between come to {@link Passwords#LEAST} signs at least, and none has to be drawn again. The list is kept to plain words rather than filled to 7776 with words that nobody can spell; with
 * {@link Throttle} and {@link PasswordHash} there is nothing to be gained from the last 3.7 bits. The words and their licence:
 * {@code soapstone/school/passphrase-words.txt}.
 */
public final class Passphrases {

    /** How many words a phrase has. */
    public static final int WORDS = 4;

    private static final List<String> LIST = WordList.of("passphrase-words");
    private static final Set<String> KNOWN = Set.copyOf(LIST);
    /** Between words, as people type it: gaps, hyphens, dots, also the long hyphens that a tablet puts in. */
    private static final Pattern BETWEEN = Pattern.compile("[\\s.\\-\\u2010-\\u2015]+");
    /** Spaces of all kinds, which look alike and come from different keyboards. */
    private static final Pattern SPACE = Pattern.compile("\\p{Zs}");
    /** No phrase of four words is longer, however it is typed; what is longer is not looked at. */
    private static final int LONGEST = 60;

    private Passphrases() {}

    /** The words that phrases are made of. */
    static List<String> words() {
        return LIST;
    }

    /**
     * A new passphrase, its words apart by single spaces.
     *
     * @param chance a {@link java.security.SecureRandom} in use
     */
    public static String draw(RandomGenerator chance) {
        return String.join(" ", chance.ints(WORDS, 0, LIST.size()).mapToObj(LIST::get).toList());
    }

    /**
     * A typed password in the one form that is hashed, when it is set and at each sign-in.
     *
     * <p>Any password is taken as it is, but for two things in which keyboards differ and eyes do not: spaces of all kinds
     * are the plain space, and letters with marks are put together (Unicode form NFC). Both are the profile OpaqueString of
     * RFC 8265, 4.2. NFC rather than NFKC, because NFKC also makes one of signs that people tell apart, such as ² and 2.
     *
     * <p>Four words of the site's own list are a passphrase, whoever thought of them: read off a slip, they may be typed in
     * any case and with spaces, hyphens or dots between. They become small letters and single spaces. Nothing is lost by
     * that, as their 48 bits count the words only. Nothing else is changed, and no other password loses its case.
     */
    public static String plain(String typed) {
        String spaced = SPACE.matcher(Normalizer.normalize(typed, Normalizer.Form.NFC)).replaceAll(" ");
        if (spaced.length() > LONGEST) {
            return spaced;
        }
        List<String> words = BETWEEN.splitAsStream(spaced.toLowerCase(Locale.ROOT)).filter(w -> !w.isEmpty()).toList();
        return words.size() == WORDS && KNOWN.containsAll(words) ? String.join(" ", words) : spaced;
    }
}
