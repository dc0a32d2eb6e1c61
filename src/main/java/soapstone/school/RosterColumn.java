package soapstone.school;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a column of a roster may hold, in the order in which columns are taken where no heading names them. */
enum RosterColumn {
    SEAT, NAME, LOGIN, TIME,
    /** Of the student in the school's own system; taken under its heading only. */
    SOURCEDID;

    /** So many are taken where no heading names them. */
    static final int BARE = 4;

    /** How people head their lists, without accents, in English and Spanish. */
    private static final Map<RosterColumn, List<String>> HEADINGS = Map.of(
            SEAT, List.of("seat", "seat no", "seat no.", "seat number", "seat #", "no", "no.", "number", "#", "place", "bench",
                    "asiento", "numero", "num", "num.", "numero de asiento", "puesto", "lugar", "banco"),
            NAME, List.of("name", "student", "student name", "shown name", "nickname", "first name", "given name",
                    "nombre", "alumno", "alumna", "estudiante", "apodo", "nombre del alumno", "nombre del estudiante"),
            LOGIN, List.of("login", "login name", "user", "user name", "username", "sign-in",
                    "usuario", "nombre de usuario", "cuenta"),
            TIME, List.of("extra time", "extra time %", "extra time in %", "extra time (%)", "time",
                    "tiempo extra", "tiempo extra %", "tiempo extra (%)", "tiempo adicional", "tiempo"),
            SOURCEDID, List.of("sourcedid"));

    static Optional<RosterColumn> of(String heading) {
        String plain = Normalizer.normalize(heading, Normalizer.Form.NFD).replaceAll("\\p{M}+", "").toLowerCase(Locale.ROOT)
                .replaceAll("[_\\s]+", " ").strip();
        return HEADINGS.entrySet().stream().filter(e -> e.getValue().contains(plain)).map(Map.Entry::getKey).findAny();
    }

    /** Where a fault in it is told. */
    String label() {
        return "@school.roster.column-" + name().toLowerCase(Locale.ROOT);
    }
}
