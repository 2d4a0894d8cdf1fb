package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.report.FindingLines;
import org.nextpull.report.FindingText;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;

/** Findings, and the error document, as JSON. */
public final class FindingsJson {
    private final FindingText text = FindingText.in(new Shown(UnitSystem.METRIC));

    /** One finding: code, severity, text and place. */
    ObjectNode node(Finding finding) {
        ObjectNode node = Json.object();
        node.put("code", finding.code().id());
        node.put("severity", finding.severity().id());
        node.put("text", text.sentence(finding));
        place(node, finding);
        if (finding.place().pull().isPresent()) {
            node.put("pull", finding.place().pull().getAsInt());
        } else {
            node.putNull("pull");
        }
        if (finding.count() > 1) {
            node.put("count", finding.count());
        }
        return node;
    }

    private static void place(ObjectNode node, Finding finding) {
        Json.putText(node, "file", finding.place().file());
        if (finding.place().line().isPresent()) {
            node.put("line", finding.place().line().getAsLong());
        } else {
            node.putNull("line");
        }
    }

    void addAll(ArrayNode array, List<Finding> findings) {
        FindingLines.sorted(findings).forEach(finding -> array.add(node(finding)));
    }

    /** The error of a document: the first finding that is an error, else the first. */
    void putError(ObjectNode document, List<Finding> findings) {
        Optional<Finding> first = findings.stream()
                .filter(Finding::isError)
                .findFirst()
                .or(() -> findings.stream().findFirst());
        first.ifPresent(finding -> document.set("error", error(finding)));
    }

    private ObjectNode error(Finding finding) {
        ObjectNode error = Json.object();
        error.put("code", finding.code().id());
        String sentence = text.sentence(finding);
        error.put("message", sentence);
        place(error, finding);
        if (finding.place().column().isPresent()) {
            error.put("column", finding.place().column().getAsInt());
        } else {
            error.putNull("column");
        }
        Json.putText(error, "key", finding.place().key());
        Json.putText(
                error,
                "value",
                finding.text("value")
                        .or(() -> finding.number("value").stream()
                                .mapToObj(Shown::plain)
                                .findFirst()));
        error.put("do", whatToDo(sentence));
        return error;
    }

    /** The catalogue writes what is wrong first and what to do after it, so the last sentence or clause is the deed. */
    private static String whatToDo(String sentence) {
        int semicolon = sentence.lastIndexOf("; ");
        int stop = sentence.lastIndexOf(". ", sentence.length() - 2);
        int from = Math.max(semicolon, stop);
        return from < 0 ? sentence : sentence.substring(from + 2);
    }

    /** A document that holds nothing but an error. */
    public String failure(List<Finding> findings) {
        ObjectNode document = Json.document();
        putError(document, findings);
        addAll(document.putArray("findings"), findings);
        return Json.pretty(document);
    }

    /** A document for wrong usage or a fault of the program, which have no finding. */
    public String failure(String code, String message) {
        ObjectNode document = Json.document();
        ObjectNode error = document.putObject("error");
        error.put("code", code);
        error.put("message", message);
        for (String key : List.of("file", "line", "column", "key", "value", "do")) {
            error.putNull(key);
        }
        return Json.pretty(document);
    }
}
