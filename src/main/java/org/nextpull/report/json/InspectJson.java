package org.nextpull.report.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Finding;
import org.nextpull.pull.Candidate;
import org.nextpull.session.SourcePulls;
import org.nextpull.unit.Unit;

/** The document of {@code inspect}. */
public final class InspectJson {
    private final FindingsJson findings = new FindingsJson();
    private final ArrayNode files = Json.object().putArray("files");

    /** Adds a log. */
    public InspectJson add(SourcePulls source) {
        ObjectNode file = start(source.name(), "log");
        source.description().ifPresent(description -> describe(file, description));
        count(file, source.rowCount());
        Json.put(file, "sample_hz", source.sampleHz(), 2);
        source.description().ifPresent(description -> columns(file, description.columns()));
        ArrayNode pulls = file.putArray("pulls");
        source.candidates().forEach(candidate -> pulls.add(pull(candidate)));
        findings.addAll(file.putArray("findings"), source.findings());
        return this;
    }

    /** Adds a table of results. */
    public InspectJson add(ResultTable table, List<Finding> tableFindings) {
        ObjectNode file = start(table.description().name(), "table");
        describe(file, table.description());
        count(file, table.rowCount());
        file.putNull("sample_hz");
        columns(file, table.description().columns());
        file.putArray("pulls");
        findings.addAll(file.putArray("findings"), tableFindings);
        return this;
    }

    private ObjectNode start(String source, String kind) {
        return files.addObject().put("source", source).put("kind", kind);
    }

    private static void describe(ObjectNode file, SourceDescription description) {
        file.put("encoding", description.encoding());
        file.put("separator", description.separator());
        file.put("decimal", String.valueOf(description.decimal()));
    }

    private static void count(ObjectNode file, BlockReader.RowCount count) {
        file.put("rows", count.good());
        file.put("bad_rows", count.bad());
    }

    private static void columns(ObjectNode file, List<SourceDescription.Column> columns) {
        ArrayNode array = file.putArray("columns");
        for (SourceDescription.Column column : columns) {
            ObjectNode node = array.addObject().put("header", column.header());
            Json.putText(node, "channel", column.channel().map(Channel::id));
            Json.putText(node, "unit", column.unit().map(Unit::symbol));
        }
    }

    private ObjectNode pull(Candidate candidate) {
        ObjectNode node = Json.object();
        node.put("number", candidate.number());
        node.put("first_line", candidate.firstLine());
        node.put("last_line", candidate.lastLine());
        Json.put(node, "from_rpm", candidate.fromRpm(), 0);
        Json.put(node, "to_rpm", candidate.toRpm(), 0);
        node.put("kind", candidate.kind().id());
        node.put("used", candidate.isUsable());
        Json.putText(
                node,
                "refused",
                candidate.refusal().map(refusal -> refusal.reason().id()));
        ArrayNode array = node.putArray("findings");
        candidate.refusal().ifPresent(refusal -> array.add(findings.node(refusal.finding())));
        findings.addAll(array, candidate.findings());
        return node;
    }

    /** The whole document; files that could not be used are its findings and, when none could, its error. */
    public String document(List<Finding> inputFindings) {
        ObjectNode document = Json.document();
        document.set("files", files);
        if (inputFindings.stream().anyMatch(Finding::isError)) {
            findings.putError(document, inputFindings);
        }
        findings.addAll(document.putArray("findings"), inputFindings);
        return Json.pretty(document);
    }

    /** One line for each file added since the last call; they are forgotten. */
    public List<String> takeLines() {
        List<String> lines = new ArrayList<>();
        files.forEach(file -> lines.add(Json.line(Json.document().setAll((ObjectNode) file))));
        files.removeAll();
        return List.copyOf(lines);
    }
}
