package soapstone.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import soapstone.proof.CheckRun;
import soapstone.proof.DrawStudy;
import soapstone.proof.FalseNames;
import soapstone.source.Issue;

/** What was found out about a bank, as JSON. */
final class CheckJson {

    private CheckJson() {}

    static ObjectNode of(CheckResult result) {
        ObjectNode data = Json.object();
        data.put("good", result.isGood());
        ObjectNode counts = data.putObject("counts");
        counts.put("exercises", result.bank().exercises().size());
        counts.put("formulas", result.bank().formulas().size());
        counts.put("tables", result.bank().tables().size());
        if (result.lessons() >= 0) {
            counts.put("lessons", result.lessons());
        }
        ObjectNode checks = counts.putObject("checks");
        CheckText.kinds(result.runs(), checks::put);
        checks.put("misprints", (int) result.runs().stream().filter(r -> r.check().misprint()).count());
        result.falseShare(false).ifPresent(s -> data.set("falseNames", Json.number(s)));
        result.falseShare(true).ifPresent(s -> data.set("falseNamesOfCounts", Json.number(s)));
        ArrayNode issues = data.putArray("issues");
        result.issues().forEach(i -> issues.add(issue(i)));
        ArrayNode failed = data.putArray("failed");
        result.failed().forEach(r -> failed.add(failed(r)));
        ArrayNode exercises = data.putArray("draws");
        result.studies().forEach(s -> exercises.add(study(result, s)));
        return data;
    }

    private static ObjectNode issue(Issue issue) {
        ObjectNode node = Json.object();
        node.put("file", issue.place().source().name());
        node.put("line", issue.place().line());
        node.put("column", issue.place().column());
        node.put("rule", issue.rule());
        node.put("found", issue.found());
        node.put("fits", issue.fits());
        return node;
    }

    private static ObjectNode failed(CheckRun run) {
        ObjectNode node = issue(CheckResult.issue(run));
        node.put("owner", run.owner());
        node.put("source", run.check().source());
        return node;
    }

    private static ObjectNode study(CheckResult result, DrawStudy study) {
        ObjectNode node = Json.object();
        node.put("exercise", study.exercise());
        node.put("units", study.system().word());
        node.put("tries", study.tries());
        node.set("refused", Json.number(study.refusedShare()));
        ObjectNode reasons = node.putObject("reasons");
        study.refused().forEach(reasons::put);
        ObjectNode seen = node.putObject("slipsSeen");
        study.seen().forEach((slip, share) -> seen.set(slip, Json.number(share)));
        ObjectNode apart = node.putObject("seldomApart");
        study.seldomApart().forEach(apart::put);
        ObjectNode names = node.putObject("falseNames");
        for (FalseNames name : result.names(study)) {
            ObjectNode ask = names.putObject(name.ask());
            ask.put("answers", name.answers());
            ask.put("named", name.named());
            ObjectNode by = ask.putObject("by");
            name.by().forEach(by::put);
        }
        node.set("faults", Json.texts(study.faults()));
        return node;
    }
}
