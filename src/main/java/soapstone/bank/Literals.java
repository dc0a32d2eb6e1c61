package soapstone.bank;

import java.util.Optional;
import soapstone.expression.Node;
import soapstone.expression.Parser;
import soapstone.quantity.Quantity;
import soapstone.quantity.Units;
import soapstone.source.Issues;
import soapstone.source.Text;

/** Reads the parts of a bank file that are written in the working language. */
final class Literals {

    private static final String RULE = "expression";

    private final Issues issues;

    Literals(Issues issues) {
        this.issues = issues;
    }

    Optional<Node> expression(Text text) {
        try {
            return Optional.of(Parser.expression(text.value()));
        } catch (Parser.Fault e) {
            told(text, e);
            return Optional.empty();
        }
    }

    /** In a { } of YAML a comma ends the value: half a call is left, and the author has to know why. */
    private void told(Text text, Parser.Fault e) {
        boolean cut = text.plain() && text.value().chars().filter(c -> c == '(').count() > text.value().chars().filter(c -> c == ')').count();
        issues.add(RULE, text.at(e.at()), e.getMessage(), cut ? "Inside of { } a comma ends the value: quote it" : e.fits());
    }

    Optional<Parser.Assignment> assignment(Text text) {
        try {
            return Optional.of(Parser.assignment(text.value()));
        } catch (Parser.Fault e) {
            told(text, e);
            return Optional.empty();
        }
    }

    /** A single amount such as {@code 3/4 in} or {@code -2 deg}. */
    Optional<Quantity> amount(Text text) {
        Optional<Quantity> amount = asAmount(text);
        if (amount.isEmpty()) {
            issues.add(RULE, text.place(), "'" + text.value() + "' is not an amount", "Such as 3/4 in, 2.5 mm, 14 or 8 %");
        }
        return amount;
    }

    /** A single amount, or empty without an issue when the text is something else. */
    static Optional<Quantity> asAmount(Text text) {
        try {
            return amount(Parser.expression(text.value()), 1);
        } catch (Parser.Fault e) {
            return Optional.empty();
        }
    }

    private static Optional<Quantity> amount(Node node, double sign) {
        if (node instanceof Node.Amount a) {
            return Optional.of(new Quantity(sign * a.amount(), a.unit()));
        }
        if (node instanceof Node.Sign s && s.sign().equals("-")) {
            return amount(s.of(), -sign);
        }
        // A plain fraction such as 22/7.
        if (node instanceof Node.Pair p && p.sign().equals("/") && p.left() instanceof Node.Amount a && p.right() instanceof Node.Amount b
                && a.unit() == Units.ONE && b.unit() == Units.ONE && b.amount() != 0) {
            return Optional.of(new Quantity(sign * a.amount() / b.amount(), Units.ONE));
        }
        return Optional.empty();
    }
}
