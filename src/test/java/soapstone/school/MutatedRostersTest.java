package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Whatever becomes of a list on its way, reading it ends in a roster with or without faults, never in an exception: ten
 * thousand plain lists and two thousand OneRoster sets, mutated with fixed seeds.
 */
class MutatedRostersTest {

    private static final int LISTS = 10_000;
    private static final int SETS = 2_000;
    private static final RosterRules RULES = new RosterRules("K7WM", "Seat", login -> login.hashCode() % 3 == 0);
    private static final List<String> SOUND = List.of("Ada Q.\nBo R.\n7\n8, Cy\n", "Ada Q.\t7\nBo\t8\n\tCy\t\n",
            "seat,name,login,extra time\r\n1,Ada,ada.q,50\r\n2,\"Quill, Bo\",,\r\n",
            "\uFEFFnombre;asiento;tiempo extra\n\"Álvaro\";12b;25 %\nAda;3;\n", "1,Ada\n1,Ada\n,,,\n\n5,Ed,ed,0\n");
    private static final String[] HOSTILE = {"\"", "\"\"", "'", ",", ";", "\t", "\n", "\r", "\r\n", "\0", "\u0007", "\uFEFF", "\uD83D", "\uDC00", "\uFFFE",
        "\u202E", "\u2028", "=1+1", "@x", "-1", "+", "NaN", "1e999", "99999999999999999999", "½", "İ", "ß", "ﬃ", "\u0301", "玉",
        "name", "seat", "nombre,seat", " ", "\u00A0", "{0}", "@school.roster.empty", "<svg onload=x>", "\\"};

    @Test
    void mutatedListsGiveARoster() {
        int right = 0;
        for (int seed = 1; seed <= LISTS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            String text = mutant(SOUND.get(random.nextInt(SOUND.size())), random);
            right += tried(seed, text, random) ? 1 : 0;
        }
        assertThat(right).as("lists that are still right").isBetween(LISTS / 20, LISTS / 2);
    }

    private static boolean tried(int seed, String text, SplittableRandom random) {
        try {
            RosterReader reader = new RosterReader(RULES);
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            if (bytes.length > 0 && random.nextInt(4) == 0) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
                assertThat(reader.read(bytes).all()).as("seed %d", seed).doesNotContainNull();
            }
            Roster roster = reader.read(text);
            sound(roster, "seed " + seed);
            return roster.isRight();
        } catch (RuntimeException e) {
            throw new AssertionError("seed " + seed + ":\n" + text, e);
        }
    }

    /** What is right can be saved: logins and seats once, nothing too long, nothing that a database refuses. */
    private static void sound(Roster roster, String what) {
        if (!roster.isRight()) {
            assertThat(roster.all().stream().anyMatch(RosterFault::isFault) || roster.rows().isEmpty()).as(what).isTrue();
            return;
        }
        assertThat(roster.rows()).as(what).extracting(Roster.Row::login).doesNotHaveDuplicates().doesNotContain("").noneMatch(RULES.taken());
        assertThat(roster.rows().stream().map(Roster.Row::seat).filter(s -> !s.isEmpty())).as(what).doesNotHaveDuplicates();
        for (Roster.Row row : roster.rows()) {
            assertThat(row.name()).as(what).hasSizeBetween(1, Roster.LONGEST_NAME);
            assertThat(row.seat() + row.name() + row.login()).as(what).doesNotContainPattern("[\\p{Cntrl}\\p{Cs}]");
            assertThat(row.login()).as(what).isEqualTo(Logins.plain(row.login())).hasSizeLessThanOrEqualTo(Roster.LONGEST_LOGIN);
        }
    }

    @Test
    void mutatedSetsGiveARoster() {
        int right = 0;
        for (int seed = 1; seed <= SETS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Map<String, String> files = new TreeMap<>(OneRosterReaderTest.set());
            String name = List.copyOf(files.keySet()).get(random.nextInt(files.size()));
            files.put(name, mutant(files.get(name), random));
            Roster roster = OneRosterReader.read(files, "class-1", OneRosterReader.NameForm.WHOLE, RULES);
            assertThat(OneRosterReader.classes(files).classes()).as("seed %d", seed).doesNotContainNull();
            sound(roster, "seed " + seed);
            right += roster.isRight() ? 1 : 0;
        }
        assertThat(right).as("sets that are still right").isBetween(SETS / 20, SETS - SETS / 20);
    }

    private static String mutant(String sound, SplittableRandom random) {
        String text = sound;
        for (int n = 1 + random.nextInt(4); n > 0; n--) {
            int at = random.nextInt(text.length() + 1);
            int end = Math.min(text.length(), at + 1 + random.nextInt(6));
            String hostile = HOSTILE[random.nextInt(HOSTILE.length)];
            text = switch (random.nextInt(6)) {
                case 0 -> text.substring(0, at) + text.substring(end);
                case 1 -> text.substring(0, end) + text.substring(at);
                case 2 -> text.substring(0, at) + hostile + text.substring(end);
                case 3 -> text.substring(0, at) + (char) random.nextInt(0x3000) + text.substring(at);
                case 4 -> text.substring(0, at) + hostile.repeat(1 + random.nextInt(200)) + text.substring(at);
                default -> text.substring(0, at) + hostile + text.substring(at);
            };
        }
        return text;
    }
}
