package soapstone.figure;

import java.util.List;
import java.util.stream.Stream;

/**
 * Sizes of a drawing that have a flag: a numbered hexagon beside their lettering, so that something outside of the drawing can
 * point at them.
 *
 * @param names in the order of their numbers, from 1: a size such as {@code pitch}, a whole list such as {@code bends}, or one
 *              of its values such as {@code bends.2}
 */
record Flags(List<String> names) {

    static final Flags NONE = new Flags(List.of());

    Flags {
        names = List.copyOf(names);
    }

    /** The name of one value of a list, counted from 0. */
    static String item(String list, int index) {
        return list + "." + (index + 1);
    }

    /** Whether a flag of that name stands for a size: it is the size's own, or that of its whole list. */
    static boolean means(String name, String size) {
        return size.equals(name) || size.startsWith(name) && size.charAt(name.length()) == '.';
    }

    /** The numbers of the flags of some sizes, an own flag before that of a whole list. */
    List<Integer> of(List<String> sizes) {
        return names.isEmpty() ? List.of() : sizes.stream().flatMap(s -> Stream.concat(names.stream().filter(s::equals), names.stream().filter(n -> !s.equals(n) && means(n, s))))
                .map(n -> names.indexOf(n) + 1).distinct().toList();
    }

    /** What the elements of these sizes carry, for the style sheet and for tests; empty for sizes without a flag. */
    String attributes(List<String> sizes) {
        List<Integer> numbers = sizes.isEmpty() ? List.of() : of(sizes);
        return numbers.isEmpty() ? "" : " data-size=\"" + String.join(" ", sizes) + "\" data-flag=\""
                + String.join(" ", numbers.stream().map(String::valueOf).toList()) + "\"";
    }
}
