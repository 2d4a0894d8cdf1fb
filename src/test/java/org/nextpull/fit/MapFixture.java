package org.nextpull.fit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.nextpull.channel.SparkMap;

/**
 * Six decisions computed beforehand by an independent program in C (refdata/map/fixtures.json), the posteriors a second time by a dense
 * program in Python. Made with the priors of {@link #priors}.
 */
public record MapFixture(JsonNode json) {
    public static Stream<MapFixture> all() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(MapFixture.class.getResourceAsStream("/refdata/map/fixtures.json"))) {
            return StreamSupport.stream(new ObjectMapper().readTree(in).spliterator(), false).toList().stream()
                    .map(MapFixture::new);
        }
    }

    public double[] numbers(String key) {
        return StreamSupport.stream(json.get(key).spliterator(), false)
                .mapToDouble(JsonNode::doubleValue)
                .toArray();
    }

    public double number(String key) {
        return json.get(key).doubleValue();
    }

    public SpeedRows rows() {
        return SpeedRows.ofRpm(numbers("rows_rpm"));
    }

    /** One prior of the map, a narrower curvature, every node of the grid, limits as they come. */
    public SurfacePriors priors() {
        SparkMap guess = SparkMap.of(numbers("rows_rpm"), numbers("prior_mean_deg"));
        return SurfacePriors.usual(guess)
                .withMap(new MapPrior(guess, MapPrior.Spread.ofGuess(), Optional.empty(), 0))
                .withLnCurvature(new Belief(Math.log(4e-4), 0.65))
                .withLimitWidening(1)
                .withStrayPulls(Integer.MAX_VALUE);
    }

    public List<SurfacePull> pulls() {
        List<SurfacePull> pulls = new ArrayList<>();
        for (JsonNode pull : json.get("pulls")) {
            List<SurfacePull.Reading> readings = new ArrayList<>();
            for (int r = 0; r < rows().size(); r++) {
                JsonNode percent = pull.get("percent").get(r);
                if (!percent.isNull()) {
                    readings.add(SurfacePull.Reading.of(
                            r, pull.get("advance_deg").get(r).doubleValue(), percent.doubleValue()));
                }
            }
            pulls.add(new SurfacePull(0, pulls.size(), false, readings));
        }
        return pulls;
    }

    /** Advance at each row of one pull, degrees. */
    public double[] advance(int pull) {
        return StreamSupport.stream(
                        json.get("pulls").get(pull).get("advance_deg").spliterator(), false)
                .mapToDouble(JsonNode::doubleValue)
                .toArray();
    }

    public Surface surface() {
        return new Surface(rows(), pulls(), priors());
    }

    @Override
    public String toString() {
        return json.get("name").textValue();
    }
}
