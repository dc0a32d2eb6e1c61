package soapstone.bank;

import java.util.Map;
import soapstone.expression.Node;

/** Puts helper lines of a slip into its expressions, so that a slip needs no names of its own. */
final class Inline {

    private Inline() {}

    static Node names(Node node, Map<String, Node> helpers) {
        if (helpers.isEmpty()) {
            return node;
        }
        if (node instanceof Node.Name n) {
            return helpers.getOrDefault(n.name(), node);
        } else if (node instanceof Node.Sign s) {
            return new Node.Sign(s.sign(), names(s.of(), helpers), s.at());
        } else if (node instanceof Node.Pair p) {
            return new Node.Pair(p.sign(), names(p.left(), helpers), names(p.right(), helpers), p.at());
        } else if (node instanceof Node.Call c) {
            return new Node.Call(c.name(), c.with().stream().map(w -> names(w, helpers)).toList(), c.at());
        }
        return node;
    }
}
