package soapstone.school;

import java.util.List;
import java.util.stream.Stream;

/** Signs in a row on a keyboard, among the digits, in the alphabet, either way. */
final class Runs {

    /** Rows and slanted columns of the keyboards of English, German, French; the digit block; with Shift, as a US keyboard has it. */
    private static final List<String> LINES = Stream.of("`1234567890-=", "~!@#$%^&*()_+", "qwertyuiop[]\\", "qwertyuiop{}|", "asdfghjkl;'", "asdfghjkl:\"",
            "zxcvbnm,./", "zxcvbnm<>?", "azertyuiop", "qsdfghjklm", "wxcvbn", "qwertzuiop", "yxcvbnm", "1qaz", "2wsx", "3edc", "4rfv", "5tgb", "6yhn",
            "7ujm", "8ik,", "9ol.", "0p;/", "!qaz", "@wsx", "#edc", "$rfv", "%tgb", "^yhn", "&ujm", "*ik<", "(ol>", "147", "258", "369", "789", "456", "123",
            "741", "01234567890123", "abcdefghijklmnopqrstuvwxyzabc").flatMap(line -> Stream.of(line, turned(line))).distinct().toList();
    private static final int SHORTEST = 3;

    private Runs() {}

    private static String turned(String line) {
        return new StringBuilder(line).reverse().toString();
    }

    /** How few signs lie beside the runs when a text in small letters is cut into runs of three or more as well as it can be. */
    static int beside(String text) {
        int[] beside = new int[text.length() + 1];
        for (int at = text.length() - 1; at >= 0; at--) {
            beside[at] = beside[at + 1] + 1;
            for (int size = longest(text, at); size >= SHORTEST; size--) {
                beside[at] = Math.min(beside[at], beside[at + size]);
            }
        }
        return beside[0];
    }

    /** The length of the longest run that begins there. */
    private static int longest(String text, int at) {
        int same = at + 1;
        while (same < text.length() && text.charAt(same) == text.charAt(at)) {
            same++;
        }
        return Math.max(same - at, LINES.stream().mapToInt(line -> along(line, text, at)).max().orElse(0));
    }

    private static int along(String line, String text, int at) {
        int start = line.indexOf(text.charAt(at));
        int most = 0;
        while (start >= 0) {
            int size = 1;
            while (start + size < line.length() && at + size < text.length() && line.charAt(start + size) == text.charAt(at + size)) {
                size++;
            }
            most = Math.max(most, size);
            start = line.indexOf(text.charAt(at), start + 1);
        }
        return most;
    }
}
