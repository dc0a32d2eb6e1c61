package soapstone.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is typed, the answer is one sentence that helps, never the inside of the program. */
class WrongUsageTest {

    private static final String BANK = Shell.SMALL.toString();

    static List<Arguments> lines() {
        return List.of(
                line("", "Say what to do"),
                line("drow", "Did you mean draw?"),
                line("draw", "Missing: --seed N, EXERCISE."),
                line("draw rails/rivets --bank BANK --sed 1", "Did you mean --seed?"),
                line("draw rails/rivets --bank BANK --seed -1", "from 0 to 4294967295"),
                line("draw rails/rivets --bank BANK --seed 4294967296", "from 0 to 4294967295"),
                line("draw rails/rivets --bank BANK --seed 1.5", "from 0 to 4294967295"),
                line("draw rails/rivets --bank BANK --seed 99999999999999999999", "from 0 to 4294967295"),
                line("draw rails/rivets --bank BANK --seed 1 --units metrc", "Did you mean metric?"),
                line("draw rivets --bank BANK --seed 1", "Did you mean rails/rivets?"),
                line("draw rails/rivet --bank BANK --seed 1", "Did you mean rails/rivets or "),
                line("draw ../../../etc/passwd --bank BANK --seed 1", "There is no exercise"),
                line("draw rails/rivets --bank nowhere --seed 1", "there is no folder nowhere"),
                line("draw rails/rivets --bank BANK --seed 1 --text --json", "mutually exclusive"),
                line("draw rails/rivets --bank BANK --seed 1 --convention k_factor=0.4", "It follows none."),
                line("draw bends/bend-allowance --seed 1 --convention k_facter=0.4", "follows no convention 'k_facter'. Did you mean k_factor?"),
                line("draw bends/bend-allowance --seed 1 --convention k_factor=0.6", "It may be: 0.25 to 0.5."),
                line("draw bends/bend-allowance --seed 1 --convention k_factor=much", "'k_factor' cannot be read: "),
                line("draw bends/bend-allowance --seed 1 --convention k_factor", "write --convention NAME=TEXT"),
                line("draw bends/bend-allowance --seed 1 --convention k_factor=0.4 --convention k_factor=0.42", "set twice"),
                line("mark triangles/brace --seed 1 --convention rounding=1/20", "It may be: 1/16"),
                line("mark rails/rivets --bank BANK --seed 1 --answer pitch", "write --answer ASK=TEXT"),
                line("mark rails/rivets --bank BANK --seed 1 --answer =4", "write --answer ASK=TEXT"),
                line("mark rails/rivets --bank BANK --seed 1 --answer pitch=4 --answer pitch=5", "two answers"),
                line("mark rails/rivets --bank BANK --seed 1 --decimal-mark ;", "decimal mark"),
                line("read", "Missing: UNIT."),
                line("read furlong 3", "There is no unit"),
                line("read in 3 4", "not known here"),
                line("work", "Missing: EXERCISE|FORMULA."),
                line("work nothing --bank BANK", "There is no exercise or formula"),
                line("work no/thing --bank BANK", "There is no exercise"),
                line("work rails/rivets --bank BANK --given", "--given"),
                line("check --draws many", "--draws"),
                line("check --draws -1", "Draws are from 0"),
                line("check BANK --bank BANK more", "not known here"),
                line("serve --port 70000", "A port is from 0 to 65535"),
                line("serve --port x", "--port"));
    }

    private static Arguments line(String typed, String says) {
        return Arguments.of(typed, says);
    }

    @ParameterizedTest
    @MethodSource("lines")
    void isToldInASentence(String typed, String says) {
        String[] args = typed.isEmpty() ? new String[0] : typed.replace("BANK", BANK).split(" ");
        Shell.Result result = Shell.run(args);
        assertThat(result.code()).as(result.err()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains(says).doesNotContain("Exception").doesNotContain("at soapstone").doesNotContain("null");
        assertThat(result.err().strip().lines().count()).as(result.err()).isEqualTo(1);
    }
}
