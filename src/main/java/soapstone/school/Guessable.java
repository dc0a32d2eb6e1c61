package soapstone.school;

import com.nulabinc.zxcvbn.StandardDictionaries;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import soapstone.source.Message;

/**
 * Passwords that are long and yet among the first that anyone tries. Case, marks on letters, gaps and signs between do not
 * count, and {@code p@ssw0rd} is {@code password}. In the order in which they are looked for:
 *
 * <ol>
 * <li>one sign again and again;
 * <li>runs along a keyboard, the digits or the alphabet, with at most three signs beside them;
 * <li>the names of the site, the school, a class, the person, with at most three letters or a common password beside them;
 * <li>a common password, alone, said again, or with digits round it: the 94 000 passwords, words and names of zxcvbn (MIT
 *     licence) and an own list of long ones, {@code soapstone/school/expected-passwords.txt};
 * <li>a piece of up to seven signs again and again.
 * </ol>
 */
final class Guessable {

    private static final String SITE = "soapstone";
    private static final Set<String> COMMON = common();
    /** A word of a name with fewer letters is in too many words to tell anything. */
    private static final int SHORTEST_NAME = 3;
    /** A listed word with fewer signs comes up in anything by chance. */
    private static final int SHORTEST_WORD = 4;
    private static final int FEW = 3;
    private static final int SHORT_PIECE = 7;
    private static final String AS_SIGNS = "@4380!1$57";
    private static final String AS_LETTERS = "aaeboiisst";

    private Guessable() {}

    /** How it can be guessed, or nothing. */
    static Optional<Message> how(String password, Collection<String> names) {
        String low = folded(password);
        if (low.codePoints().distinct().count() == 1) {
            return said("school.password-one-sign");
        }
        if (Runs.beside(low) <= FEW) {
            return said("school.password-run");
        }
        List<String> parts = parts(names);
        if (forms(low).anyMatch(form -> isNames(form, parts))) {
            return said("school.password-name");
        }
        if (forms(low).anyMatch(Guessable::isCommon)) {
            return said("school.password-common");
        }
        return Stream.of(low, bare(low)).anyMatch(Guessable::isRepeated) ? said("school.password-repeated") : Optional.empty();
    }

    private static Optional<Message> said(String key) {
        return Optional.of(Message.of(key));
    }

    /** Small letters without marks. */
    private static String folded(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKD).replaceAll("\\p{M}", "").toLowerCase(Locale.ROOT);
    }

    /** What a password may be meant as: as it is, letters and digits, letters, and both of these with signs read as letters. */
    private static Stream<String> forms(String low) {
        String read = asLetters(low);
        return Stream.of(low, bare(low), letters(low), bare(read), letters(read), letters(asLetters(withoutDigitsRound(low)))).distinct();
    }

    private static String bare(String text) {
        return text.replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private static String letters(String text) {
        return text.replaceAll("\\P{L}", "");
    }

    /** The digits at the ends are a year or a count, those inside may be letters. */
    private static String withoutDigitsRound(String text) {
        return text.replaceAll("^[^\\p{L}@$]+|[^\\p{L}@$]+$", "");
    }

    private static String asLetters(String text) {
        StringBuilder out = new StringBuilder();
        text.chars().forEach(c -> out.append(AS_SIGNS.indexOf(c) < 0 ? (char) c : AS_LETTERS.charAt(AS_SIGNS.indexOf(c))));
        return out.toString();
    }

    private static boolean isCommon(String form) {
        String piece = piece(form);
        return piece.length() >= SHORTEST_WORD && (COMMON.contains(piece) || COMMON.contains(form));
    }

    private static boolean isRepeated(String form) {
        int size = piece(form).length();
        return size < form.length() && size <= SHORT_PIECE;
    }

    /** The piece that a text says again and again, the last time perhaps not to its end; the text itself where it says nothing twice. */
    static String piece(String text) {
        for (int size = 1; size <= text.length() / 2; size++) {
            if (text.startsWith(text.substring(size))) {
                return text.substring(0, size);
            }
        }
        return text;
    }

    /** The names and the words in them, the longest first, so that a short one does not break up a long one. */
    private static List<String> parts(Collection<String> names) {
        return Stream.concat(Stream.of(SITE), names.stream()).map(Guessable::folded)
                .flatMap(name -> Stream.concat(Stream.of(bare(name), letters(name)), Stream.of(name.split("[^\\p{L}\\p{N}]+"))))
                .filter(part -> letters(part).length() >= SHORTEST_NAME).distinct()
                .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(Comparator.naturalOrder())).toList();
    }

    private static boolean isNames(String form, List<String> parts) {
        String rest = form;
        for (String part : parts) {
            rest = rest.replace(part, " ");
        }
        String left = letters(rest);
        return !rest.equals(form) && (left.length() <= FEW || isCommon(left));
    }

    private static Set<String> common() {
        try {
            Set<String> all = new HashSet<>(WordList.of("expected-passwords"));
            StandardDictionaries.loadAllDictionaries().forEach(list -> all.addAll(list.getFrequencies()));
            return Set.copyOf(all);
        } catch (IOException e) {
            throw new UncheckedIOException("the lists of zxcvbn", e);
        }
    }
}
